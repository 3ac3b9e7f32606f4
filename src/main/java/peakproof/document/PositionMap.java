package peakproof.document;

import java.util.HashMap;
import java.util.Map;

/** Places by pointer, gathered from the trees of one plan. */
final class PositionMap implements Positions {
  private final Map<String, Place> places = new HashMap<>();
  private final Place first;

  /**
   * @param first the place of whatever no tree holds
   */
  PositionMap(Place first) {
    this.first = first;
  }

  /** Adds a value and all below it. */
  void add(Node node) {
    places.put(node.pointer(), node.place());
    if (node.tree() instanceof Tree.Mapping mapping) {
      mapping.entries().forEach((key, entry) -> add(node.entry(key, entry)));
    } else if (node.tree() instanceof Tree.Sequence sequence) {
      node.items(sequence).forEach(this::add);
    }
  }

  /** Adds places that stand inside a text. */
  void addAll(Map<String, Place> marks) {
    places.putAll(marks);
  }

  @Override
  public Place of(String pointer) {
    String at = pointer;
    while (!at.isEmpty()) {
      Place place = places.get(at);
      if (place != null) {
        return place;
      }
      at = at.substring(0, Math.max(0, at.lastIndexOf('/')));
    }
    return first;
  }
}
