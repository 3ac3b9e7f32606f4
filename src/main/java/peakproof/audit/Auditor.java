package peakproof.audit;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Fault;
import peakproof.document.Reading;
import peakproof.fact.Facts;
import peakproof.rule.KnownRules;
import peakproof.rule.Resolution;
import peakproof.rule.RuleFolder;
import peakproof.rule.Ruleset;

/**
 * Audits plans with one set of rules, on any number of threads. Nothing in it changes, so all plans
 * share it; but cases are judged one after the other, and none after a rule that ran away.
 */
public final class Auditor {
  private final Rulesets rulesets;
  private final Watchdog watchdog = new Watchdog();

  private Auditor(Rulesets rulesets) {
    this.rulesets = rulesets;
  }

  /** Reads and compiles the rules of these folders afresh, the shipped one first. */
  public static Auditor load(List<Path> ruleFolders) {
    return new Auditor(new Rulesets(ruleFolders, RuleFolder::load));
  }

  /** Reads the rules to judge by, and compiles those that are not known. */
  public static Auditor load(List<Path> ruleFolders, Supplier<KnownRules> known) {
    return new Auditor(
        new Rulesets(ruleFolders, folders -> RuleFolder.toJudge(folders, known.get())));
  }

  /** What the user chose; null where nothing. */
  public record Options(@Nullable LocalDate asOf, @Nullable Path house) {}

  /** What came of one plan. */
  public sealed interface Outcome {
    /**
     * It was read and judged; not completely when a rule for it is broken and judges nobody.
     *
     * @param background what lies behind it, worked out when asked for
     */
    record Judged(Audit audit, boolean complete, Supplier<Background> background)
        implements Outcome {}

    /** A document of it is wrong, or the house asks for what the rules do not have. */
    record Wrong(List<Fault> faults) implements Outcome {}

    /** A rule did not come to its end on it; nothing can be said of it. */
    record Stopped(Fault rule, Stop stop) implements Outcome {}
  }

  /** How a rule did not come to its end. */
  public enum Stop {
    /** It failed on this plan; it may well judge others. */
    FAILED,
    /** It went on for too long or without end, and may be at it still. */
    RAN_AWAY,
    /** There was no memory left, for it or for whatever else ran beside it. */
    OUT_OF_MEMORY
  }

  /** Faults of the rules, with that of one that ran away; the sound ones still judge. */
  public List<Fault> ruleFaults() {
    RunawayRule runaway = watchdog.bitten();
    List<Fault> faults = rules().faults();
    return runaway == null
        ? faults
        : Stream.concat(faults.stream(), Stream.of(fault(runaway, rules()))).toList();
  }

  /** Faults of the rules of houses whose plans were audited so far. */
  public List<Fault> houseRuleFaults() {
    return rulesets.faultsOfHouses();
  }

  private static Fault fault(RunawayRule runaway, Ruleset rules) {
    return rules.fault(
        runaway.rule,
        (runaway.rule == null ? "a rule" : "the rule '" + runaway.rule + "'") + " " + runaway.what,
        "a rule is done with a plan in a blink",
        "tie its facts together by what they have in common, such as the same week");
  }

  /** The rules that all plans share. */
  public Ruleset rules() {
    return rulesets.shared();
  }

  /** Reads and judges one plan. */
  public Outcome audit(Path plan, Options options) {
    return audit(Documents.read(plan, options.house()), options.asOf());
  }

  /**
   * Judges one plan that was read. A rule that runs away on it keeps no other plan from being
   * judged: whether to go on is up to who asks.
   */
  public Outcome audit(Reading reading, @Nullable LocalDate asOf) {
    Dossier dossier = reading.dossier();
    if (dossier == null) {
      return new Outcome.Wrong(reading.faults());
    }
    Ruleset rules = rules(dossier);
    return audit(rules, dossier, Resolution.of(rules, dossier), asOf, new Watchdog());
  }

  /** Reads one plan and works it out without judging it. */
  public Workup.Outcome workUp(Path plan, Options options) {
    Reading reading = Documents.read(plan, options.house());
    Dossier dossier = reading.dossier();
    if (dossier == null) {
      return new Workup.Outcome.Wrong(reading.faults());
    }
    Ruleset rules = rules(dossier);
    Resolution resolved = Resolution.of(rules, dossier);
    if (!resolved.faults().isEmpty()) {
      return new Workup.Outcome.Wrong(resolved.faults());
    }
    LocalDate asOf = options.asOf();
    LocalDate day = asOf == null ? Facts.lastKnownDay(dossier) : asOf;
    Facts facts = Facts.of(dossier, day, resolved.constants(), rules.waterTable());
    return new Workup.Outcome.Done(
        new Workup(
            Assembly.slashes(dossier.planFile()),
            dossier.logFile() == null ? null : Assembly.slashes(dossier.logFile()),
            dossier.plan().athlete().name(),
            dossier.plan().event().name(),
            dossier.plan().event().date(),
            day,
            facts.measured(),
            facts.forecast(),
            dossier.positions()));
  }

  /** Judges a plan already read by the shared rules as they count for it. */
  Outcome audit(Dossier dossier, Resolution resolved, @Nullable LocalDate asOf) {
    return audit(rules(), dossier, resolved, asOf, watchdog);
  }

  /** The rules for a plan: those all share, and its house's own. */
  Ruleset rules(Dossier dossier) {
    return rulesets.of(dossier.house());
  }

  /** Judges a plan already read by some rules as they count for it. */
  Outcome audit(Ruleset rules, Dossier dossier, Resolution resolved, @Nullable LocalDate asOf) {
    return audit(rules, dossier, resolved, asOf, watchdog);
  }

  private static Outcome audit(
      Ruleset rules,
      Dossier dossier,
      Resolution resolved,
      @Nullable LocalDate asOf,
      Watchdog watchdog) {
    if (!resolved.faults().isEmpty()) {
      return new Outcome.Wrong(resolved.faults());
    }
    LocalDate day = asOf == null ? Facts.lastKnownDay(dossier) : asOf;
    Facts facts = Facts.of(dossier, day, resolved.constants(), rules.waterTable());
    try {
      Assembly assembly = new Assembly(rules, dossier, resolved, facts, day);
      return new Outcome.Judged(
          assembly.audit(watchdog),
          rules.faults().isEmpty(),
          () -> Background.of(dossier, facts, resolved.settings()));
    } catch (RunawayRule runaway) {
      return new Outcome.Stopped(fault(runaway, rules), runaway.stop);
    }
  }
}
