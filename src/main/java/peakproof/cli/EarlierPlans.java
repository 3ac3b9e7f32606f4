package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Auditor;
import peakproof.audit.Auditor.Outcome;
import peakproof.audit.Baseline;
import peakproof.audit.Gone;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Place;
import peakproof.git.Snapshot;

/**
 * The plans of a git revision, judged as of the day their successors are judged. What did not
 * change is not judged twice.
 */
final class EarlierPlans {
  private final Snapshot snapshot;
  private final SinceOptions.Here here;
  private final ChangedPlans changed;
  private final Auditor auditor;
  private final Messages messages;

  private EarlierPlans(
      Snapshot snapshot, SinceOptions.Here here, Auditor auditor, Messages messages) {
    this.snapshot = snapshot;
    this.here = here;
    this.changed = new ChangedPlans(snapshot, here);
    this.auditor = auditor;
    this.messages = messages;
  }

  /** All plans of the revision, by the rules as they were. */
  static Baseline of(
      Snapshot snapshot,
      SinceOptions.Here here,
      Auditor auditor,
      Baseline.Present present,
      Messages messages) {
    List<Path> folders = here.ruleFolders().stream().map(folder -> then(snapshot, folder)).toList();
    Auditor then = folders.equals(here.ruleFolders()) ? auditor : here.rules().apply(folders);
    EarlierPlans plans = new EarlierPlans(snapshot, here, then, messages);
    List<Baseline.Earlier> all = new ArrayList<>();
    for (Path plan : Documents.plansUnder(snapshot.files())) {
      Dossier dossier = Documents.read(plan, plans.house()).dossier();
      if (dossier != null) {
        all.add(plans.new Plan(plan, plans.shown(plan.toString()), Baseline.Who.of(dossier)));
      }
    }
    return new Baseline(all, present);
  }

  /** Rules that lie outside the repository, or did not lie in it yet, are taken as they are. */
  private static Path then(Snapshot snapshot, Path folder) {
    Path earlier = snapshot.earlier(folder);
    return earlier != null && Files.isDirectory(earlier) && snapshot.changed(folder)
        ? earlier
        : folder;
  }

  private @Nullable Path house() {
    Path house = here.options().house();
    Path earlier = house == null ? null : snapshot.earlier(house);
    return earlier != null && Files.isRegularFile(earlier) ? earlier : house;
  }

  /** A path in the snapshot as the user would write it for the repository. */
  private String shown(String file) {
    Path path = Path.of(file);
    if (!path.startsWith(snapshot.files())) {
      return file;
    }
    return PresentPlans.shown(snapshot.now(path), here.paths());
  }

  /** One of them. */
  private final class Plan implements Baseline.Earlier {
    private final Path file;
    private final String plan;
    private final Baseline.Who who;

    Plan(Path file, String plan, Baseline.Who who) {
      this.file = file;
      this.plan = plan;
      this.who = who;
    }

    @Override
    public String plan() {
      return plan;
    }

    @Override
    public Baseline.Who who() {
      return who;
    }

    @Override
    public List<Gone> findings(@Nullable Audit now) {
      if (now != null && now.plan().equals(plan) && !changed.has(Path.of(now.plan()))) {
        return Baseline.findings(now);
      }
      LocalDate asOf = now == null ? here.options().asOf() : now.asOf();
      Outcome outcome = auditor.audit(file, new Auditor.Options(asOf, house()));
      if (outcome instanceof Outcome.Judged judged) {
        return Baseline.findings(judged.audit()).stream().map(EarlierPlans.this::shown).toList();
      }
      messages.tell(plan + ": its earlier version cannot be judged, so all its findings are new");
      return List.of();
    }
  }

  private Gone shown(Gone gone) {
    Place place = gone.place();
    return new Gone(
        gone.rule(),
        gone.severity(),
        gone.title(),
        gone.fingerprint(),
        new Place(shown(place.file()), place.line(), place.column()),
        gone.ofHealth());
  }
}
