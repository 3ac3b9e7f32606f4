package peakproof.document;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Reads documents that a test writes out. */
public final class Texts {
  static final String EVENT =
      """
      event:
        name: Saltmarsh Long Course
        date: 2027-07-04
        legs: {swim: 3.8km, bike: 180km, run: 42.2km}
      """;

  /** A plan up to its weeks, which are lines 5 and on. */
  static final String PLAN =
      """
      plan:
        format: 1
        athlete: {name: Tove Lindqvist}
        event: event.yaml
      """;

  private static final ThreadLocal<@Nullable Consumer<Given>> WATCHING = new ThreadLocal<>();

  private Texts() {}

  /** The documents of one reading. */
  record Given(String plan, @Nullable String event, @Nullable String log, @Nullable String house) {}

  /** Something that reads documents. */
  @FunctionalInterface
  interface Reads {
    void run() throws Throwable;
  }

  /** Every set of documents that is read meanwhile. */
  static void watching(Consumer<Given> watcher, Reads reads) throws Throwable {
    WATCHING.set(watcher);
    try {
      reads.run();
    } finally {
      WATCHING.remove();
    }
  }

  static List<String> faults(String plan) {
    return faults(plan, EVENT, null, null);
  }

  static List<String> faults(
      String plan, @Nullable String event, @Nullable String log, @Nullable String house) {
    Consumer<Given> watcher = WATCHING.get();
    if (watcher != null) {
      watcher.accept(new Given(plan, event, log, house));
    }
    List<Fault> faults = new ArrayList<>();
    Tree planTree = tree("plan.yaml", plan, faults);
    Tree eventTree = tree("event.yaml", event, faults);
    Tree logTree = tree("log.yaml", log, faults);
    Tree houseTree = tree("house.yaml", house, faults);
    if (planTree != null) {
      faults.addAll(Documents.read("plan.yaml", planTree, eventTree, logTree, houseTree).faults());
    }
    Collections.sort(faults);
    return faults.stream().map(Fault::toString).toList();
  }

  /** A plan with what belongs to it; a test fails when a document of it is wrong. */
  public static Dossier dossier(
      String plan, @Nullable String event, @Nullable String log, @Nullable String house) {
    List<Fault> faults = new ArrayList<>();
    Tree planTree = Objects.requireNonNull(tree("plan.yaml", plan, faults));
    Reading reading =
        Documents.read(
            "plan.yaml",
            planTree,
            tree("event.yaml", event, faults),
            tree("log.yaml", log, faults),
            tree("house.yaml", house, faults));
    faults.addAll(reading.faults());
    if (!faults.isEmpty()) {
      throw new AssertionError("faults: " + faults);
    }
    return Objects.requireNonNull(reading.dossier());
  }

  private static @Nullable Tree tree(String name, @Nullable String text, List<Fault> faults) {
    if (text == null) {
      return null;
    }
    YamlTree.Parsed parsed = YamlTree.read(name, text.getBytes(StandardCharsets.UTF_8));
    faults.addAll(parsed.faults());
    return parsed.tree();
  }
}
