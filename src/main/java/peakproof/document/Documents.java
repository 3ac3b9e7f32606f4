package peakproof.document;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where documents come in: plans with their event, log and house file. */
public final class Documents {
  private Documents() {}

  /**
   * Reads a plan's file with its event, its log ({@code log:} of the plan, else {@code log.yaml}
   * beside it) and the nearest {@code house.yaml} upwards.
   *
   * @param houseOverride the house file to use instead of the nearest
   */
  public static Reading read(Path planFile, @Nullable Path houseOverride) {
    Faults faults = new Faults();
    DocumentFiles files = new DocumentFiles(faults);
    return read(planFile, files.open(planFile), houseOverride, files, faults);
  }

  /** As {@link #read(Path, Path)}, with another text in the place of the plan's file. */
  public static Reading readAs(Path planFile, Tree plan, @Nullable Path houseOverride) {
    Faults faults = new Faults();
    return read(planFile, plan, houseOverride, new DocumentFiles(faults), faults);
  }

  private static Reading read(
      Path planFile,
      @Nullable Tree plan,
      @Nullable Path houseOverride,
      DocumentFiles files,
      Faults faults) {
    Tree.Scalar logName = named(plan, "log");
    Tree.Scalar eventName = named(plan, "event");
    Tree event = eventName == null ? null : files.openNamed(planFile, eventName);
    Tree log = logName == null ? logBeside(planFile, files) : files.openNamed(planFile, logName);
    Path house = houseOverride == null ? DocumentFiles.house(planFile) : houseOverride;
    Tree houseTree = house == null ? null : files.open(house);
    if (plan == null) {
      return new Reading(null, faults.sorted());
    }
    return DossierReader.read(faults, planFile, plan, event, log, houseTree);
  }

  /**
   * Reads a plan not yet in its file, as if it were there, with its event, log and house.
   *
   * @param houseOverride the house file to use instead of the nearest
   */
  public static Reading readAs(Path planFile, String text, @Nullable Path houseOverride) {
    Faults faults = new Faults();
    return read(
        planFile,
        tree(planFile.toString(), text, faults),
        houseOverride,
        new DocumentFiles(faults),
        faults);
  }

  /** Reads documents that are in no file yet; places name {@code plan}, {@code event}, … */
  public static Reading drafted(String plan, @Nullable String event, @Nullable String house) {
    Faults faults = new Faults();
    Tree planTree = tree("plan", plan, faults);
    Tree eventTree = event == null ? null : tree("event", event, faults);
    Tree houseTree = house == null ? null : tree("house", house, faults);
    return planTree == null || !faults.none()
        ? new Reading(null, faults.sorted())
        : read("plan", planTree, eventTree, null, houseTree);
  }

  private static @Nullable Tree tree(String name, String text, Faults faults) {
    YamlTree.Parsed parsed = YamlTree.read(name, text.getBytes(StandardCharsets.UTF_8));
    faults.addAll(parsed.faults());
    return parsed.tree();
  }

  /**
   * Reads a plan from trees already in memory. A plan that names the file of its event or log is
   * satisfied by the given one; a plan that holds its event inline needs none.
   */
  public static Reading read(
      String planName, Tree plan, @Nullable Tree event, @Nullable Tree log, @Nullable Tree house) {
    Faults faults = new Faults();
    refuseAbsent(plan, "event", event, faults);
    refuseAbsent(plan, "log", log, faults);
    return DossierReader.read(faults, Path.of(planName), plan, event, log, house);
  }

  /**
   * Reads a log by itself, with the words of the nearest {@code house.yaml} upwards.
   *
   * @param houseOverride the house file to use instead of the nearest
   */
  public static LogReading readLog(Path logFile, Tree log, @Nullable Path houseOverride) {
    Faults faults = new Faults();
    Path house = houseOverride == null ? DocumentFiles.house(logFile) : houseOverride;
    Tree houseTree = house == null ? null : new DocumentFiles(faults).open(house);
    return DossierReader.readLog(faults, log, houseTree);
  }

  private static void refuseAbsent(Tree plan, String kind, @Nullable Tree given, Faults faults) {
    Tree.Scalar name = named(plan, kind);
    if (name != null && given == null) {
      faults.add(
          name.place(),
          "the " + kind + " '" + name.text() + "' is not given",
          "expected the " + kind + " beside the plan",
          kind.equals("event")
              ? "write the event into the plan"
              : "add the log, or leave this out");
    }
  }

  /**
   * The plans in a folder, sorted by path: YAML files whose first key is {@code plan}, in folders
   * whose names do not begin with a dot. A path that is no folder is taken as a plan.
   */
  public static List<Path> plansUnder(Path path) {
    return Files.isDirectory(path) ? PlanFolder.search(path) : List.of(path);
  }

  /**
   * The files that are read for a plan and the folders of its house's own rules, whether they exist
   * or not.
   *
   * @param houseOverride the house file to use instead of the nearest
   */
  public static List<Path> sources(Path planFile, @Nullable Path houseOverride) {
    return PlanSources.of(
        planFile, houseOverride == null ? DocumentFiles.house(planFile) : houseOverride);
  }

  /** The nearest {@code house.yaml} in a folder or those above it; null when there is none. */
  public static @Nullable Path houseFrom(Path folder) {
    return DocumentFiles.house(folder.resolve("plan.yaml"));
  }

  private static @Nullable Tree logBeside(Path planFile, DocumentFiles files) {
    Path log = planFile.resolveSibling("log.yaml");
    boolean another = Files.isRegularFile(log) && !log.equals(planFile);
    return another ? files.open(log) : null;
  }

  /** The text of a key of the plan; null when it is not written or holds no text. */
  private static Tree.@Nullable Scalar named(@Nullable Tree plan, String key) {
    Tree.Entry content = plan == null ? null : plan.entry("plan");
    Tree.Entry entry = content == null ? null : content.value().entry(key);
    return entry != null
            && entry.value() instanceof Tree.Scalar scalar
            && scalar.style() != Tree.Style.FAULTY
        ? scalar
        : null;
  }
}
