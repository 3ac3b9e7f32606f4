package peakproof.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Auditor;
import peakproof.report.Choice;
import peakproof.report.Layout;
import peakproof.report.LinesReport;
import peakproof.report.Rank;
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
    name = AuditCommand.NAME,
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Audits plans with their logs and prints ranked findings.",
    footer = {
      "",
      "Examples: all plans of a folder; one plan with every finding; for a pipeline",
      "  peakproof audit plans",
      "  peakproof audit plans/runa/plan.yaml --all",
      "  peakproof audit plans --format json --output audit.json --fail-at fix",
      "For a change proposed in a repository: the coach's text here, reports for its host beside",
      "  peakproof audit plans --report sarif=audit.sarif --report markdown=comment.md",
      "A page to look at:",
      "  peakproof audit plans/runa/plan.yaml --format html --output runa.html",
      "Only what a proposed change made worse fails:",
      "  peakproof audit plans --changed-since main --against main --fail-on-new",
      "A finding the coach has seen and lives with, written into the plan:",
      "  peakproof audit plans/runa --accept strength-none --because \"does it with her physio\"",
      "A stream of plans, a line each:",
      "  peakproof audit --stream < plans.ndjson > audits.ndjson"
    })
final class AuditCommand implements Callable<Integer> {
  static final String NAME = "audit";

  /** The property that says how many plans are audited at a time. */
  static final String CORES = "peakproof.cores";

  private static final String ONE_PAGE =
      "'--format html' is one page of one plan, and %d were found;"
          + " all of a squad: peakproof roster %s --output DIR";

  private static final int USUAL_TOP = 3;
  private static final int STALE_DAYS = 2;

  private final InputStream in;
  private final Messages messages;
  private final Surroundings surroundings;
  private final HeadStart start;

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "PATH",
      arity = "0..*",
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

  @Mixin private ReportOptions reports = new ReportOptions();

  @Option(
      names = "--stream",
      description = {
        "Instead of files: reads one plan a line from standard input, as JSON with plan,",
        "log, event and house, and writes one audit a line, as ndjson."
      })
  private boolean stream;

  @Option(
      names = "--fail-at",
      paramLabel = "hold|fix|ask|note",
      description = "Exit with 1 from this severity on. Default: hold.")
  private Severity failAt = Severity.HOLD;

  @Mixin private AcceptOptions accept = new AcceptOptions();
  @Mixin private SinceOptions since = new SinceOptions();
  @Mixin private RuleFolders rules = new RuleFolders();
  @Mixin private PageOptions page = new PageOptions();

  AuditCommand(InputStream in, Messages messages, Surroundings surroundings, HeadStart start) {
    this.in = in;
    this.messages = messages;
    this.surroundings = surroundings;
    this.start = start;
  }

  @Override
  public Integer call() {
    Auditor.Options options = day.chosen(surroundings);
    if (stream) {
      return streamed(options);
    }
    if (paths.isEmpty()) {
      throw wrong("Missing required parameter: 'PATH'");
    }
    Choice choice = choice();
    Auditor auditor = start.auditor(rules);
    if (accept.asked()) {
      PlanPaths found = PlanPaths.under(paths, messages);
      return found
          .worst()
          .or(accept.accept(List.copyOf(found.all()), auditor, options, messages))
          .number();
    }
    Layout layout =
        new Layout(
            choice,
            page.width(surroundings, reports.toFile()),
            page.ink(surroundings, reports.toFile()),
            failAt,
            reports.withHealth(),
            Version.PROGRAM,
            auditor::rules);
    PlanPaths plans = PlanPaths.under(paths, messages);
    int count = plans.all().size();
    if (reports.onePlanOnly() && count > 1) {
      throw wrong(ONE_PAGE.formatted(count, paths.get(0)));
    }
    ExitCode[] code = {plans.worst()};
    try (Past past = since.past(here(options, plans), auditor, messages)) {
      ExitCode written =
          reports.write(
              layout,
              ReportOptions.onFile(layout, page.width(surroundings, true)),
              into -> code[0] = code[0].or(audited(auditor, options, past, into)),
              messages);
      return code[0].or(written).or(rules.wrong(auditor, messages)).number();
    }
  }

  private SinceOptions.Here here(Auditor.Options options, PlanPaths plans) {
    return new SinceOptions.Here(
        paths,
        plans.all(),
        options,
        rules.all(surroundings),
        folders -> Auditor.load(folders, rules.known(surroundings)));
  }

  private ExitCode audited(
      Auditor auditor, Auditor.Options options, Past past, ReportOptions.Reports into)
      throws IOException {
    Collection<Path> plans = past.plans();
    AuditRun<Path, Rank> run =
        new AuditRun<>(
            plan -> auditor.audit(plan, options),
            new PageOfPlan(into::pages, failAt, past, this::oldLog),
            messages,
            surroundings.clock(),
            "of " + plans.size() + " ");
    run.audit(Math.max(1, Math.min(cores(), plans.size())), plans.iterator(), into::add);
    into.end(plans.size(), past.balance());
    return run.worst();
  }

  private int streamed(Auditor.Options options) {
    if (!paths.isEmpty()) {
      throw wrong("'--stream' reads from standard input, not from '" + paths.get(0) + "'");
    }
    if (since.any() || accept.asked()) {
      throw wrong("'--stream' neither compares nor accepts; its plans have no files");
    }
    String obstacle = reports.notForStream();
    if (obstacle != null) {
      throw wrong(obstacle);
    }
    Auditor auditor = start.auditor(rules);
    ExitCode[] code = {ExitCode.FINE};
    ExitCode written =
        reports
            .output()
            .write(
                out -> {
                  LinesReport report = new LinesReport(out, Version.PROGRAM);
                  AuditRun<InputLine, Rank> run =
                      new AuditRun<>(
                          line -> auditor.audit(line.read(options.house()), options.asOf()),
                          new PageOfLine(report, failAt),
                          messages,
                          surroundings.clock(),
                          "");
                  run.audit(
                      cores(), new InputLines(in), settled -> report.add(settled.pages().get(0)));
                  code[0] = run.worst();
                },
                messages);
    return code[0].or(written).or(rules.wrong(auditor, messages)).number();
  }

  /** How many plans are audited at a time; the property is for tests and measurements. */
  static int cores() {
    return Math.max(1, Integer.getInteger(CORES, Runtime.getRuntime().availableProcessors()));
  }

  private Choice choice() {
    if (amount.top < 0) {
      throw wrong("Invalid value for option '--top': expected 0 or more");
    }
    return new Choice(amount.all, amount.top);
  }

  /**
   * What to say of a log that ends long ago. The clock is heard here only: it never changes a
   * finding or the report.
   */
  private @Nullable String oldLog(Audit audit) {
    LocalDate today = LocalDate.now(surroundings.clock());
    LocalDate ends = audit.logEnds();
    if (day.saysDay() || ends == null || today.isAfter(audit.raceDate())) {
      return null;
    }
    long age = ChronoUnit.DAYS.between(ends, today);
    return age > STALE_DAYS
        ? audit.plan() + ": the log ends " + age + " days ago; '--as-of today' judges from today"
        : null;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
