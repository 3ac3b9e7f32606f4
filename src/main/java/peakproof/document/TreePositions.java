package peakproof.document;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Places by pointer, looked up in the trees of one plan when somebody asks. */
final class TreePositions implements Positions {
  private final List<Node> roots;
  private final Map<String, Place> marks;
  private final Place first;

  /**
   * Takes the trees.
   *
   * @param marks places that stand inside a text
   * @param first the place of whatever no tree holds
   */
  TreePositions(List<Node> roots, Map<String, Place> marks, Place first) {
    this.roots = List.copyOf(roots);
    this.marks = Map.copyOf(marks);
    this.first = first;
  }

  @Override
  public Place of(String pointer) {
    String at = pointer;
    while (!at.isEmpty()) {
      Place mark = marks.get(at);
      Place place = mark == null ? written(at) : mark;
      if (place != null) {
        return place;
      }
      at = at.substring(0, Math.max(0, at.lastIndexOf('/')));
    }
    return first;
  }

  private @Nullable Place written(String pointer) {
    for (Node root : roots) {
      if (pointer.equals(root.pointer())) {
        return root.place();
      }
      if (pointer.startsWith(root.pointer() + "/")) {
        return below(root, pointer.substring(root.pointer().length() + 1).split("/", -1));
      }
    }
    return null;
  }

  private static @Nullable Place below(Node root, String[] steps) {
    Node node = root;
    for (String step : steps) {
      node = node.child(step);
      if (node == null) {
        return null;
      }
    }
    return node.place();
  }
}
