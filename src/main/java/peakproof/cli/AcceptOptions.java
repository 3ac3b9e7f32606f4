package peakproof.cli;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Auditor;
import peakproof.audit.Auditor.Outcome;
import peakproof.audit.Finding;
import peakproof.document.Documents;
import peakproof.document.Nearest;
import peakproof.document.Splice;
import peakproof.document.Tree;
import peakproof.document.YamlValue;
import peakproof.rule.Severity;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes into a plan that its coach has seen a finding and lives with it. */
final class AcceptOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--accept",
      paramLabel = "RULE",
      description = {
        "Write into the one plan named that its coach has seen what this rule finds and",
        "lives with it. Needs --because; a HOLD also --by and --until."
      })
  private @Nullable String rule;

  @Option(names = "--because", paramLabel = "TEXT", description = "With --accept: the reason.")
  private @Nullable String because;

  @Option(names = "--by", paramLabel = "WHO", description = "With --accept: who decided.")
  private @Nullable String by;

  @Option(
      names = "--until",
      paramLabel = "DATE",
      description = "With --accept: the last day it counts; after it the finding is back.")
  private @Nullable LocalDate until;

  @Option(
      names = "--week",
      paramLabel = "DATE",
      description = "With --accept: only in the week that begins on this Monday.")
  private @Nullable LocalDate week;

  @Option(names = "--day", paramLabel = "DATE", description = "With --accept: only on this day.")
  private @Nullable LocalDate day;

  /** True when the user accepts something; a usage fault when only half of it is said. */
  boolean asked() {
    if (rule == null) {
      boolean half = Stream.of(because, by, until, week, day).anyMatch(each -> each != null);
      if (half) {
        throw wrong("a reason, a name or a date needs '--accept', which names the rule");
      }
      return false;
    }
    if (because == null || because.isBlank()) {
      throw wrong("'--accept' needs '--because' with the reason");
    }
    if (week != null && (day != null || week.getDayOfWeek() != DayOfWeek.MONDAY)) {
      throw wrong("'--accept' takes one '--day', or one '--week' that begins on a Monday");
    }
    return true;
  }

  /** Writes the entry, unless there is nothing to accept or it would not count. */
  ExitCode accept(List<Path> plans, Auditor auditor, Auditor.Options options, Messages messages) {
    if (plans.size() != 1) {
      throw wrong("'--accept' writes into one plan; here are " + plans.size());
    }
    Path plan = plans.get(0);
    Audit before = judged(auditor.audit(plan, options), messages);
    if (before == null) {
      return ExitCode.WRONG_DOCUMENT;
    }
    String slug = slug(auditor, before);
    refuseWhatDoesNotCount(slug, before);
    SplicedFile file = SplicedFile.open(plan);
    Splice splice = file.splice();
    if (splice == null) {
      messages.tell(file.faults());
      return ExitCode.WRONG_DOCUMENT;
    }
    Function<Tree, Outcome> again =
        tree -> auditor.audit(Documents.readAs(plan, tree, options.house()), before.asOf());
    return file.finish(
        with((YamlValue.Keys) splice.content(), entry(slug)),
        1,
        false,
        tree -> {
          Outcome outcome = again.apply(tree);
          if (outcome instanceof Outcome.Judged judged && same(before, judged.audit())) {
            throw wrong("'" + slug + "' finds nothing on that day or in that week");
          }
          return outcome instanceof Outcome.Wrong wrong ? wrong.faults() : List.of();
        },
        messages,
        done -> command.commandLine().getOut().println(slug + " is accepted: " + plan));
  }

  private static @Nullable Audit judged(Outcome outcome, Messages messages) {
    if (outcome instanceof Outcome.Wrong wrong) {
      messages.tell(wrong.faults());
    } else if (outcome instanceof Outcome.Stopped stopped) {
      messages.tell(List.of(stopped.rule()));
    }
    return outcome instanceof Outcome.Judged judged ? judged.audit() : null;
  }

  /** The rule by its name now, even when the user says a former one. */
  private String slug(Auditor auditor, Audit audit) {
    String name = String.valueOf(rule);
    String slug = auditor.rules().slug(name);
    List<String> found = audit.findings().stream().map(Finding::rule).distinct().toList();
    if (slug == null && found.contains(name)) {
      return name;
    }
    if (slug == null) {
      String near = Nearest.among(name, auditor.rules().cards().keySet());
      throw wrong(
          "there is no rule '"
              + name
              + "'; "
              + (near == null
                  ? "it stands at the right of each finding"
                  : "did you mean '" + near + "'?"));
    }
    return slug;
  }

  private void refuseWhatDoesNotCount(String slug, Audit audit) {
    List<Finding> found =
        audit.findings().stream().filter(finding -> finding.rule().equals(slug)).toList();
    if (found.isEmpty()) {
      throw wrong(
          "'" + slug + "' finds nothing in " + audit.plan() + " that is not accepted already");
    }
    boolean hold = found.stream().anyMatch(finding -> finding.severity() == Severity.HOLD);
    if (hold && (by == null || by.isBlank() || until == null)) {
      throw wrong("'" + slug + "' is a HOLD: accepting it needs '--by' and '--until'");
    }
    if (until != null && until.isBefore(audit.asOf())) {
      throw wrong("'--until " + until + "' is over on " + audit.asOf() + ", from which is judged");
    }
  }

  private static boolean same(Audit one, Audit two) {
    return one.findings().equals(two.findings());
  }

  private YamlValue.Keys entry(String slug) {
    YamlValue.Keys entry = YamlValue.Keys.NONE.with("rule", slug);
    if (week != null) {
      entry = entry.with("week", week.toString());
    }
    if (day != null) {
      entry = entry.with("day", day.toString());
    }
    entry = entry.with("because", String.valueOf(because).strip());
    if (by != null) {
      entry = entry.with("by", by.strip());
    }
    return until == null ? entry : entry.with("until", until.toString());
  }

  private static YamlValue.Keys with(YamlValue.Keys document, YamlValue.Keys entry) {
    YamlValue.Keys plan = (YamlValue.Keys) Objects.requireNonNull(document.get("plan"));
    List<YamlValue> accepted = new ArrayList<>();
    if (plan.get("accepted") instanceof YamlValue.Items items) {
      accepted.addAll(items.items());
    }
    accepted.add(entry);
    return document.with("plan", plan.with("accepted", YamlValue.items(accepted)));
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
