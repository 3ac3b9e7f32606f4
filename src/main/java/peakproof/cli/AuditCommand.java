package peakproof.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.Callable;
import peakproof.audit.Audit;
import peakproof.audit.Auditor;
import peakproof.report.JsonReport;
import peakproof.report.Report;
import peakproof.report.Report.Judged;
import peakproof.report.TextReport;
import peakproof.rule.Severity;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The main job: audits plans and prints what a coach should know before sending them. */
@Command(
    name = "audit",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Audits plans with their logs and prints ranked findings.",
    footer = {
      "",
      "Examples: all plans of a folder; one plan with every finding; for a pipeline",
      "  peakproof audit plans",
      "  peakproof audit plans/runa/plan.yaml --all",
      "  peakproof audit plans --format json --output audit.json --fail-at fix"
    })
final class AuditCommand implements Callable<Integer> {
  private static final int USUAL_TOP = 3;
  private static final int STALE_DAYS = 2;

  /** What a report is written in. */
  enum Format {
    TEXT,
    JSON
  }

  private final Messages messages;
  private final Surroundings surroundings;

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "PATH",
      arity = "1..*",
      description = "A plan, or a folder that is searched for plans.")
  private List<Path> paths = List.of();

  @Mixin private DayOptions day = new DayOptions();

  @ArgGroup private Amount amount = new Amount();

  /** How many findings to show; the two options exclude each other. */
  static final class Amount {
    @Option(names = "--all", description = "Every finding, notes too, and every rule not judged.")
    private boolean all;

    @Option(
        names = "--top",
        paramLabel = "N",
        description = "How many findings to show besides every HOLD. Default: 3.")
    private int top = USUAL_TOP;
  }

  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "What to write. Default: text. JSON always has every finding.")
  private Format format = Format.TEXT;

  @Mixin private OutputOptions output = new OutputOptions();

  @Option(
      names = "--fail-at",
      paramLabel = "hold|fix|ask|note",
      description = "Exit with 1 from this severity on. Default: hold.")
  private Severity failAt = Severity.HOLD;

  @Mixin private RuleFolders rules = new RuleFolders();
  @Mixin private PageOptions page = new PageOptions();

  AuditCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Auditor.Options options = day.chosen(surroundings);
    Report.Choice choice = choice();
    int width = page.width(surroundings, output.toFile());
    List<Path> folders = rules.all(surroundings);

    Auditor auditor = Auditor.load(folders, rules.known(surroundings));
    AuditRun run =
        new AuditRun(plan -> auditor.audit(plan, options), messages, surroundings.clock());
    run.auditAll(paths);
    run.note(auditor.rules().faults().isEmpty() ? ExitCode.FINE : ExitCode.WRONG_RULE);
    messages.tell(auditor.rules().faults());
    messages.tell(auditor.houseRuleFaults());
    run.judged().stream().map(Judged::audit).forEach(this::warnOfOldLog);

    Report report = run.report(choice);
    String text =
        switch (format) {
          case TEXT -> TextReport.of(report, width, page.ink(surroundings, output.toFile()));
          case JSON -> JsonReport.of(report, Version.PROGRAM);
        };
    run.note(report.reaches(failAt) ? ExitCode.FOUND : ExitCode.FINE);
    run.note(output.write(text, messages));
    return run.worst().number();
  }

  private Report.Choice choice() {
    if (amount.top < 0) {
      throw wrong("Invalid value for option '--top': expected 0 or more");
    }
    return new Report.Choice(amount.all, amount.top);
  }

  /** The clock is heard here only: it never changes a finding or the report. */
  private void warnOfOldLog(Audit audit) {
    LocalDate today = LocalDate.now(surroundings.clock());
    LocalDate ends = audit.logEnds();
    if (day.saysDay() || ends == null || today.isAfter(audit.raceDate())) {
      return;
    }
    long age = ChronoUnit.DAYS.between(ends, today);
    if (age > STALE_DAYS) {
      messages.tell(
          audit.plan() + ": the log ends " + age + " days ago; '--as-of today' judges from today");
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
