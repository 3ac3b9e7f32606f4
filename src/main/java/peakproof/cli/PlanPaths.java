package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import peakproof.document.Documents;

/**
 * The plans of a run: at some paths and in some folders, each once however many ways lead to it.
 */
final class PlanPaths {
  private final Messages messages;
  private final Map<Path, Path> found = new LinkedHashMap<>();
  private ExitCode worst = ExitCode.FINE;

  private PlanPaths(Messages messages) {
    this.messages = messages;
  }

  /** Searches, and tells where there is none. */
  static PlanPaths under(List<Path> paths, Messages messages) {
    PlanPaths plans = new PlanPaths(messages);
    for (Path path : paths) {
      plans.at(path).forEach(plan -> plans.found.putIfAbsent(whole(plan), plan));
    }
    return plans;
  }

  /** A path without any plan may be a typing mistake, so it must not pass for a sound one. */
  private List<Path> at(Path path) {
    boolean exists = Files.exists(path);
    List<Path> plans = exists ? Documents.plansUnder(path) : List.of();
    if (plans.isEmpty()) {
      messages.tell(
          path
              + (exists
                  ? ": no plan found; a plan is a YAML file that begins with 'plan:'"
                  : ": no such file or folder"));
      worst = ExitCode.WRONG_DOCUMENT;
    }
    return plans;
  }

  private static Path whole(Path plan) {
    return plan.toAbsolutePath().normalize();
  }

  /** As they were found. */
  Collection<Path> all() {
    return found.values();
  }

  /** What the search alone makes the exit code. */
  ExitCode worst() {
    return worst;
  }
}
