package peakproof.cli;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Auditor;
import peakproof.audit.Workup;
import peakproof.document.Place;
import peakproof.report.Brief;
import peakproof.report.BriefCalendar;
import peakproof.report.BriefMarkdown;
import peakproof.report.BriefPage;
import peakproof.report.Briefing;
import peakproof.rule.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes what the athlete gets, once nothing holds the plan. */
@Command(
    name = "brief",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Writes what the athlete gets: sessions, goals, race-day card and cautions, for print or"
          + " calendar.",
      "Refused, with exit code 1, while the plan has a HOLD that is not accepted."
    },
    footer = {
      "",
      "Examples: a page to print; a calendar; the words alone",
      "  peakproof brief plans/runa/plan.yaml --output runa.html",
      "  peakproof brief plans/runa/plan.yaml --format ics --time-zone Europe/Oslo --output runa.ics",
      "  peakproof brief plans/runa/plan.yaml --format markdown"
    })
final class BriefCommand implements Callable<Integer> {
  /** What a brief is written in. */
  enum Format {
    HTML,
    MARKDOWN,
    ICS
  }

  @Spec private CommandSpec command;

  private final Messages messages;
  private final Surroundings surroundings;

  @Parameters(paramLabel = "PLAN", description = "A plan, or the folder it lies in.")
  private Path path = Path.of("");

  @Mixin private DayOptions day = new DayOptions();
  @Mixin private RulesInForce rules = new RulesInForce();

  @Option(
      names = "--format",
      paramLabel = "html|markdown|ics",
      description = "What to write. Default: html.")
  private Format format = Format.HTML;

  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      description = "The paper a page is printed on. Default: a4.")
  private BriefPage.Paper paper = BriefPage.Paper.A4;

  @Option(
      names = "--time-zone",
      paramLabel = "ZONE",
      description =
          "The time zone of the race, such as Europe/Oslo. Default: local time, whatever it is.")
  private @Nullable String zone;

  @Option(
      names = "--despite-hold",
      paramLabel = "REASON",
      description = "Write it although the plan has a HOLD; said on standard error, never in it.")
  private @Nullable String despiteHold;

  @Mixin private OutputOptions output = new OutputOptions();

  BriefCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    if (despiteHold != null && despiteHold.isBlank()) {
      throw wrong("Invalid value for option '--despite-hold': expected a reason in words");
    }
    ZoneId venue = venue();
    Auditor.Options options = day.chosen(surroundings);
    Auditor auditor = rules.load(messages, surroundings);
    Path plan = rules.one(path);
    Auditor.Outcome outcome = auditor.audit(plan, options);
    messages.tell(auditor.houseRuleFaults());
    if (outcome instanceof Auditor.Outcome.Wrong wrong) {
      messages.tell(wrong.faults());
      return ExitCode.WRONG_DOCUMENT.or(RulesInForce.code(auditor)).number();
    }
    if (outcome instanceof Auditor.Outcome.Stopped stopped) {
      messages.tell(List.of(stopped.rule()));
      return ExitCode.WRONG_RULE.number();
    }
    ExitCode code = gate((Auditor.Outcome.Judged) outcome);
    if (code != ExitCode.FINE) {
      return code.number();
    }
    return write(auditor, plan, options, venue).or(RulesInForce.code(auditor)).number();
  }

  /** Fine when the brief may go out; what stands against it is told either way. */
  private ExitCode gate(Auditor.Outcome.Judged judged) {
    List<String> holds = holds(judged.audit());
    if (!judged.complete()) {
      messages.tell("peakproof: a rule is wrong, so that a hold may have been missed");
    }
    holds.forEach(messages::tell);
    if (holds.isEmpty() && judged.complete()) {
      return ExitCode.FINE;
    }
    if (despiteHold != null) {
      messages.tell("peakproof: written despite that, because: " + despiteHold);
      return ExitCode.FINE;
    }
    messages.tell(
        "peakproof: no brief was written. Change the plan, or accept "
            + (holds.size() == 1 ? "it" : "each")
            + " under 'accepted' in the plan with rule, because, by and until; --despite-hold"
            + " REASON writes the brief as things stand");
    return judged.complete() ? ExitCode.FOUND : ExitCode.WRONG_RULE;
  }

  private static List<String> holds(Audit audit) {
    return audit.findings().stream()
        .filter(finding -> finding.severity() == Severity.HOLD)
        .map(
            finding -> {
              Place place = finding.where().isEmpty() ? null : finding.where().get(0).place();
              return (place == null ? audit.plan() : place.file() + ":" + place.line())
                  + ": HOLD "
                  + finding.rule()
                  + ": "
                  + finding.title();
            })
        .toList();
  }

  private ExitCode write(
      Auditor auditor, Path plan, Auditor.Options options, @Nullable ZoneId venue) {
    Workup.Outcome outcome = auditor.workUp(plan, options);
    if (outcome instanceof Workup.Outcome.Wrong wrong) {
      messages.tell(wrong.faults());
      return ExitCode.WRONG_DOCUMENT;
    }
    Brief brief = Briefing.of(((Workup.Outcome.Done) outcome).workup(), venue);
    String text =
        switch (format) {
          case HTML -> BriefPage.of(brief, paper);
          case MARKDOWN -> BriefMarkdown.of(brief);
          case ICS -> BriefCalendar.of(brief);
        };
    return output.write(text, messages);
  }

  private @Nullable ZoneId venue() {
    if (zone == null) {
      return null;
    }
    if (ZoneId.getAvailableZoneIds().contains(zone)) {
      return ZoneId.of(zone);
    }
    throw wrong(
        "Invalid value for option '--time-zone': expected a name such as Europe/Oslo, but was '"
            + zone
            + "'");
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
