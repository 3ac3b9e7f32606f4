package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.audit.Baseline;
import peakproof.git.Snapshot;
import peakproof.report.EarlierReport;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What changed: which plans are reported, and what their findings are compared with. */
final class SinceOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--changed-since",
      paramLabel = "REV",
      description = {
        "Report only plans of which a file changed since a git revision: the plan, its",
        "log, event or house, or a rule. Files not in git yet count as changed."
      })
  private @Nullable String changedSince;

  @Option(
      names = "--against",
      paramLabel = "REV|FILE",
      description = {
        "Say which findings are new, known or gone, compared with a git revision or with",
        "what '--format json' wrote before."
      })
  private @Nullable String against;

  @Option(
      names = "--fail-on-new",
      description = "With --against: exit with 1 for new findings only, at or above --fail-at.")
  private boolean failOnNew;

  /** True when the user asks for any of it. */
  boolean any() {
    return changedSince != null || against != null || failOnNew;
  }

  /** The rest of a run that a comparison needs. */
  record Here(
      List<Path> paths,
      Collection<Path> plans,
      Auditor.Options options,
      List<Path> ruleFolders,
      Function<List<Path>, Auditor> rules) {}

  /** Looks into the past; a usage fault when that cannot be done. */
  Past past(Here here, Auditor auditor, Messages messages) {
    if (failOnNew && against == null) {
      throw wrong("'--fail-on-new' needs '--against', which tells what is new");
    }
    Past past = new Past(here.plans(), failOnNew);
    boolean done = false;
    try {
      if (changedSince != null) {
        past.keep(changed(changedSince, here, past, messages));
      }
      if (against != null) {
        past.compareWith(against, baseline(against, here, auditor, past, messages));
      }
      done = true;
      return past;
    } finally {
      if (!done) {
        past.close();
      }
    }
  }

  private Collection<Path> changed(String revision, Here here, Past past, Messages messages) {
    ChangedPlans changed = new ChangedPlans(snapshot(revision, here, past), here);
    List<Path> plans = here.plans().stream().filter(changed::has).toList();
    messages.tell(
        "peakproof: of "
            + here.plans().size()
            + " plans "
            + plans.size()
            + " changed since "
            + revision);
    return plans;
  }

  private Baseline baseline(
      String earlier, Here here, Auditor auditor, Past past, Messages messages) {
    Path file = file(earlier);
    PresentPlans present = new PresentPlans(here);
    if (file == null) {
      return EarlierPlans.of(snapshot(earlier, here, past), here, auditor, present, messages);
    }
    List<Baseline.Earlier> report = EarlierReport.read(file, auditor.rules().ofHealth());
    if (report == null) {
      throw wrong(
          "'"
              + earlier
              + "' is not what '--format json' writes; write it again from the earlier state");
    }
    return new Baseline(report, present);
  }

  private static @Nullable Path file(String name) {
    try {
      Path file = Path.of(name);
      return Files.isRegularFile(file) ? file : null;
    } catch (InvalidPathException revision) {
      return null;
    }
  }

  private Snapshot snapshot(String revision, Here here, Past past) {
    Snapshot known = past.snapshot(revision);
    if (known != null) {
      return known;
    }
    Snapshot.Outcome outcome = Snapshot.take(PresentPlans.folder(here.paths()), revision);
    if (outcome instanceof Snapshot.Outcome.Refused refused) {
      throw wrong(refused.why());
    }
    Snapshot taken = ((Snapshot.Outcome.Taken) outcome).snapshot();
    past.add(revision, taken);
    for (Path path : here.paths()) {
      if (taken.earlier(path) == null) {
        throw wrong("'" + path + "' lies outside the git repository of the other paths");
      }
    }
    return taken;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
