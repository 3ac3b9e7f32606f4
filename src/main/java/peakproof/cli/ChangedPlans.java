package peakproof.cli;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import peakproof.document.Documents;
import peakproof.git.Snapshot;

/** Tells which plans would be judged differently, because a file of theirs or a rule changed. */
final class ChangedPlans {
  private final Snapshot snapshot;
  private final @Nullable Path house;
  private final boolean rules;
  private final Map<Path, Boolean> known = new ConcurrentHashMap<>();

  ChangedPlans(Snapshot snapshot, SinceOptions.Here here) {
    this.snapshot = snapshot;
    this.house = here.options().house();
    this.rules = here.ruleFolders().stream().anyMatch(snapshot::changed);
  }

  /** True for a plan that changed; files it named then count like those it names now. */
  boolean has(Path plan) {
    if (rules) {
      return true;
    }
    Set<Path> sources = new LinkedHashSet<>(Documents.sources(plan, house));
    Path then = snapshot.earlier(plan);
    if (then != null) {
      Documents.sources(then, house).stream()
          .filter(source -> source.startsWith(snapshot.files()))
          .map(snapshot::now)
          .forEach(sources::add);
    }
    return sources.stream().anyMatch(source -> known.computeIfAbsent(source, snapshot::changed));
  }
}
