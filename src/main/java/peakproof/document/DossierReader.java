package peakproof.document;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the trees of one plan into its dossier. */
final class DossierReader {
  private final Faults faults;
  private final Map<String, Place> marks = new HashMap<>();
  private final List<Node> roots = new ArrayList<>();

  private DossierReader(Faults faults) {
    this.faults = faults;
  }

  /** Reads all of them, adding to the faults already found. */
  static Reading read(
      Faults faults,
      Path planFile,
      Tree plan,
      @Nullable Tree event,
      @Nullable Tree log,
      @Nullable Tree house) {
    DossierReader reader = new DossierReader(faults);
    Dossier dossier = reader.dossier(planFile, plan, event, log, house);
    return new Reading(faults.none() ? dossier : null, faults.sorted());
  }

  /** Reads a log alone, adding to the faults already found. */
  static LogReading readLog(Faults faults, Tree logTree, @Nullable Tree houseTree) {
    DossierReader reader = new DossierReader(faults);
    HouseReader houseReader = reader.houseReader(houseTree);
    Node houseNode = reader.content(DocumentKind.HOUSE, houseTree);
    if (houseNode != null) {
      houseReader.read(houseNode);
    }
    Log log = reader.log(reader.desk(houseReader), logTree);
    Positions positions = new TreePositions(reader.roots, reader.marks, logTree.place());
    return new LogReading(faults.none() ? log : null, positions, faults.sorted());
  }

  private HouseReader houseReader(@Nullable Tree houseTree) {
    Path houseFile = file(houseTree);
    return new HouseReader(
        Desk.plain(faults, marks), houseFile == null ? Path.of("house.yaml") : houseFile);
  }

  private Desk desk(HouseReader house) {
    return new Desk(
        faults,
        marks,
        Vocabulary.KIT.plus(house.kit()),
        Vocabulary.PRACTISE.plus(house.practise()),
        house.sessions());
  }

  private @Nullable Log log(Desk desk, @Nullable Tree logTree) {
    Node logNode = content(DocumentKind.LOG, logTree);
    return logNode == null ? null : new LogReader(desk).read(logNode);
  }

  private @Nullable Dossier dossier(
      Path planFile,
      Tree planTree,
      @Nullable Tree eventTree,
      @Nullable Tree logTree,
      @Nullable Tree houseTree) {
    HouseReader houseReader = houseReader(houseTree);
    Node houseNode = content(DocumentKind.HOUSE, houseTree);
    House house = houseNode == null ? null : houseReader.read(houseNode);
    Desk desk = desk(houseReader);
    Log log = log(desk, logTree);
    Node planNode = content(DocumentKind.PLAN, planTree);
    if (planNode == null) {
      return null;
    }
    Node inline = inlineEvent(planNode);
    Node eventNode = inline == null ? content(DocumentKind.EVENT, eventTree) : inline;
    Plan plan = new PlanReader(desk).read(planNode, eventNode);
    if (plan == null) {
      return null;
    }
    if (inline != null) {
      roots.add(inline);
    }
    Positions positions = new TreePositions(roots, marks, planNode.place());
    return new Dossier(planFile, file(logTree), file(houseTree), plan, log, house, positions);
  }

  private @Nullable Node content(DocumentKind kind, @Nullable Tree tree) {
    Node node = tree == null ? null : kind.content(tree, faults);
    if (node != null) {
      roots.add(node);
    }
    return node;
  }

  private static @Nullable Node inlineEvent(Node plan) {
    Tree.Entry event = plan.tree().entry("event");
    return event == null || event.value() instanceof Tree.Scalar
        ? null
        : new Node("/event", event.key(), event.value());
  }

  private static @Nullable Path file(@Nullable Tree tree) {
    return tree == null ? null : Path.of(tree.place().file());
  }
}
