package peakproof.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.audit.Workup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The one plan of a command that works a plan out without judging it. */
final class OnePlan {
  @Parameters(paramLabel = "PLAN", description = "A plan, or the folder it lies in.")
  private Path path = Path.of("");

  @Mixin private RulesInForce rules = new RulesInForce();

  /** The plan worked out; null, with its faults told, when a document of it is wrong. */
  @Nullable Workup workUp(DayOptions day, Messages messages, Surroundings surroundings) {
    Auditor.Options options = day.chosen(surroundings);
    Auditor auditor = rules.loadQuietly(surroundings);
    Workup.Outcome outcome = auditor.workUp(rules.one(path), options);
    if (outcome instanceof Workup.Outcome.Wrong wrong) {
      messages.tell(wrong.faults());
      return null;
    }
    return ((Workup.Outcome.Done) outcome).workup();
  }

  /** Whoever judges it; what is wrong with the rules is told by commands about rules. */
  Auditor auditor(Surroundings surroundings) {
    return rules.loadQuietly(surroundings);
  }

  /** The plan judged. */
  Auditor.Outcome audit(Auditor auditor, DayOptions day, Surroundings surroundings) {
    return auditor.audit(rules.one(path), day.chosen(surroundings));
  }
}
