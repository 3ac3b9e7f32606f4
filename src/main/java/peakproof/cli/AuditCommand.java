package peakproof.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
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

  @Option(
      names = "--as-of",
      paramLabel = "DATE|today",
      description =
          "The day that splits what was done from what is planned."
              + " Default: the last day of the log, else the day before the plan.")
  private @Nullable String asOf;

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

  @Option(
      names = "--output",
      paramLabel = "FILE",
      description = "Write to a file instead of standard output.")
  private @Nullable Path output;

  @Option(
      names = "--fail-at",
      paramLabel = "hold|fix|ask|note",
      description = "Exit with 1 from this severity on. Default: hold.")
  private Severity failAt = Severity.HOLD;

  @Option(
      names = "--house",
      paramLabel = "FILE",
      description = "The house file to use. Default: the nearest house.yaml above the plan.")
  private @Nullable Path house;

  @Mixin private RuleFolders rules = new RuleFolders();
  @Mixin private PageOptions page = new PageOptions();

  AuditCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Auditor.Options options = new Auditor.Options(asOfDate(), existing(house));
    Report.Choice choice = choice();
    int width = page.width(surroundings, output != null);
    List<Path> folders = rules.all(surroundings);

    Auditor auditor = Auditor.load(folders);
    messages.tell(auditor.ruleFaults());
    AuditRun run =
        new AuditRun(
            plan -> auditor.audit(plan, options),
            auditor.ruleFaults().isEmpty(),
            messages,
            surroundings.clock());
    run.auditAll(paths);
    run.judged().stream().map(Judged::audit).forEach(this::warnOfOldLog);

    Report report = run.report(choice);
    String text =
        switch (format) {
          case TEXT -> TextReport.of(report, width, page.ink(surroundings, output != null));
          case JSON -> JsonReport.of(report, Version.PROGRAM);
        };
    run.note(report.reaches(failAt) ? ExitCode.FOUND : ExitCode.FINE);
    run.note(write(text));
    return run.worst().number();
  }

  private @Nullable LocalDate asOfDate() {
    if (asOf == null) {
      return null;
    }
    if (asOf.equals("today")) {
      return LocalDate.now(surroundings.clock());
    }
    try {
      return LocalDate.parse(asOf);
    } catch (DateTimeException unreadable) {
      throw wrong(
          "Invalid value for option '--as-of': expected a date such as 2027-05-30, or today, but"
              + " was '"
              + asOf
              + "'");
    }
  }

  private @Nullable Path existing(@Nullable Path file) {
    if (file != null && !Files.isRegularFile(file)) {
      throw wrong("Invalid value for option '--house': no file at '" + file + "'");
    }
    return file;
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
    if (asOf != null || ends == null || today.isAfter(audit.raceDate())) {
      return;
    }
    long age = ChronoUnit.DAYS.between(ends, today);
    if (age > STALE_DAYS) {
      messages.tell(
          audit.plan() + ": the log ends " + age + " days ago; '--as-of today' judges from today");
    }
  }

  private ExitCode write(String text) {
    if (output == null) {
      command.commandLine().getOut().print(text);
      return ExitCode.FINE;
    }
    try {
      Output.write(output, text);
      return ExitCode.FINE;
    } catch (IOException refused) {
      messages.tell(
          "peakproof: cannot write '" + output + "' (" + refused.getClass().getSimpleName() + ")");
      return ExitCode.WRONG_USAGE;
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
