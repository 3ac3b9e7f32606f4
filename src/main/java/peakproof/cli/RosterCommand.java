package peakproof.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.report.Ink;
import peakproof.report.Roster;
import peakproof.report.RosterJson;
import peakproof.report.RosterPage;
import peakproof.report.RosterText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells who needs the coach first, and what the squad has in common. */
@Command(
    name = "roster",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Lists who needs the coach first, a line an athlete, below what the squad has in common.",
      "It is for the coach: it tells what hurts. Drafts to the squad name nobody."
    },
    footer = {
      "",
      "Examples: tonight's list; what is new since last Sunday",
      "  peakproof roster plans",
      "  peakproof roster plans --since 2027-05-23",
      "A folder of pages to look at, one for each athlete; open squad/index.html",
      "  peakproof roster plans --output squad"
    })
final class RosterCommand implements Callable<Integer> {
  /** What a roster is written in. */
  enum Format {
    TEXT,
    JSON,
    HTML
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

  @Option(
      names = "--since",
      paramLabel = "DATE",
      description =
          "What is new, heavier or gone since that day: the same files judged as of it, too.")
  private @Nullable String since;

  @Option(
      names = "--all",
      description = "In text, everything the squad has in common, notes too. Default: the first 3.")
  private boolean all;

  @Option(
      names = "--format",
      paramLabel = "text|json|html",
      description = {
        "What to write. Default: text; html when --output names a folder, or no ending:",
        "then every athlete gets a page there, and index.html leads to them."
      })
  private @Nullable Format format;

  @Mixin private OutputOptions output = new OutputOptions();
  @Mixin private RuleFolders rules = new RuleFolders();
  @Mixin private PageOptions page = new PageOptions();

  RosterCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Auditor.Options options = day.chosen(surroundings);
    LocalDate compared = DayOptions.date("--since", since, "", command);
    if (compared != null && options.asOf() != null && !options.asOf().isAfter(compared)) {
      throw wrong("'--since' is to be a day before '--as-of'");
    }
    Path folder = folder();
    int width = page.width(surroundings, output.toFile());
    Ink ink = page.ink(surroundings, output.toFile());
    Auditor auditor = rules.auditor(surroundings);
    PlanPaths plans = PlanPaths.under(paths, messages);
    Round round = new Round(auditor, options, compared, plans);
    ExitCode written =
        folder == null
            ? output.write(out -> out.write(text(round.roster(null), width, ink)), messages)
            : site(round, folder);
    return plans.worst().or(round.worst).or(written).or(rules.wrong(auditor, messages)).number();
  }

  private String text(Roster roster, int width, Ink ink) {
    return switch (format == null ? Format.TEXT : format) {
      case TEXT -> RosterText.of(roster, all, width, ink);
      case JSON -> RosterJson.of(roster, Version.PROGRAM);
      case HTML -> RosterPage.of(roster);
    };
  }

  /** The folder that is to get a page for each plan; null when one file is enough. */
  private @Nullable Path folder() {
    Path target = output.file();
    if (target == null || format == Format.TEXT || format == Format.JSON) {
      return null;
    }
    boolean ending = String.valueOf(target.getFileName()).matches(".+\\..+");
    return Files.isDirectory(target) || !ending && !Files.exists(target) ? target : null;
  }

  private ExitCode site(Round round, Path folder) {
    if (round.plans.all().isEmpty()) {
      return ExitCode.FINE;
    }
    try {
      Site site = Site.in(folder);
      if (site.isForeign()) {
        throw wrong("'" + folder + "' has an index.html of something else; name another folder");
      }
      site.finish(RosterPage.of(round.roster(site)));
      List<String> left = site.left();
      if (!left.isEmpty()) {
        messages.tell(
            folder
                + ": pages of earlier runs that nothing leads to: "
                + String.join(", ", left)
                + "; delete what is not needed");
      }
      return ExitCode.FINE;
    } catch (IOException refused) {
      return OutputOptions.refused(folder, refused, messages);
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }

  /** All plans, each looked at once. */
  private final class Round {
    private final Auditor auditor;
    private final Auditor.Options options;
    private final @Nullable LocalDate compared;
    private final PlanPaths plans;
    private ExitCode worst = ExitCode.FINE;

    Round(Auditor auditor, Auditor.Options options, @Nullable LocalDate compared, PlanPaths plans) {
      this.auditor = auditor;
      this.options = options;
      this.compared = compared;
      this.plans = plans;
    }

    /** Audits them; with a site each page is written as it comes. */
    Roster roster(@Nullable Site site) throws IOException {
      int count = plans.all().size();
      Roster roster =
          new Roster(
              plans.all().stream().map(plan -> plan.toString().replace('\\', '/')).toList(),
              compared);
      Auditor.Options then = new Auditor.Options(compared, options.house());
      AuditRun<Path, Roster.Entry> run =
          new AuditRun<>(
              plan -> auditor.audit(plan, options),
              new LineOfPlan(compared, plan -> auditor.audit(plan, then), site != null),
              messages,
              surroundings.clock(),
              "of " + count + " ");
      run.audit(
          Math.max(1, Math.min(AuditCommand.cores(), count)),
          plans.all().iterator(),
          settled -> {
            Roster.Entry entry = Objects.requireNonNull(settled.kept());
            String file =
                site == null
                    ? null
                    : site.write(Path.of(entry.rank().plan()), settled.pages().get(0));
            roster.add(entry, file);
          });
      worst = run.worst();
      return roster;
    }
  }
}
