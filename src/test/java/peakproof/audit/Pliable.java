package peakproof.audit;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import peakproof.document.Place;
import peakproof.document.Tree;
import peakproof.document.YamlTree;

/** Documents as maps, lists and texts that can be changed, and what can be made of them again. */
final class Pliable {
  private Pliable() {}

  static Object of(Tree tree) {
    if (tree instanceof Tree.Mapping mapping) {
      Map<String, Object> map = new LinkedHashMap<>();
      mapping.entries().forEach((key, entry) -> map.put(key, of(entry.value())));
      return map;
    }
    if (tree instanceof Tree.Sequence sequence) {
      List<Object> list = new ArrayList<>();
      sequence.items().forEach(item -> list.add(of(item)));
      return list;
    }
    return ((Tree.Scalar) tree).text();
  }

  static Object read(String text) {
    YamlTree.Parsed parsed = YamlTree.read("text", text.getBytes(StandardCharsets.UTF_8));
    if (parsed.tree() == null || !parsed.faults().isEmpty()) {
      throw new IllegalStateException("" + parsed.faults());
    }
    return of(parsed.tree());
  }

  static Object copy(Object value) {
    if (value instanceof Map<?, ?> map) {
      Map<String, Object> copy = new LinkedHashMap<>();
      map.forEach((key, below) -> copy.put((String) key, copy(below)));
      return copy;
    }
    if (value instanceof List<?> list) {
      List<Object> copy = new ArrayList<>();
      list.forEach(item -> copy.add(copy(item)));
      return copy;
    }
    return value;
  }

  static Tree tree(Object value, String file) {
    Place place = new Place(file, 1, 1);
    if (value instanceof Map<?, ?> map) {
      Map<String, Tree.Entry> entries = new LinkedHashMap<>();
      map.forEach(
          (key, below) -> entries.put((String) key, new Tree.Entry(place, tree(below, file))));
      return new Tree.Mapping(place, entries);
    }
    if (value instanceof List<?> list) {
      return new Tree.Sequence(place, list.stream().map(item -> tree(item, file)).toList());
    }
    return new Tree.Scalar(place, (String) value);
  }

  /**
   * The same content in another dress: on one line, in quotes, the keys from the last to the first.
   */
  static String rewritten(Object value) {
    if (value instanceof Map<?, ?> map) {
      List<String> entries = new ArrayList<>();
      map.forEach((key, below) -> entries.add(0, rewritten(key) + ": " + rewritten(below)));
      return "{" + String.join(",  ", entries) + "}";
    }
    if (value instanceof List<?> list) {
      return "[ " + String.join(", ", list.stream().map(Pliable::rewritten).toList()) + " ]";
    }
    return '"' + ((String) value).replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  /** A key of a map, at any depth. */
  record Spot(Map<String, Object> map, String key) {
    Object value() {
      return map.get(key);
    }

    void set(Object value) {
      map.put(key, value);
    }
  }

  /** Every key at every depth, in the order of the document. */
  static List<Spot> spots(Object value) {
    List<Spot> spots = new ArrayList<>();
    collect(value, spots);
    return spots;
  }

  private static void collect(Object value, List<Spot> spots) {
    if (value instanceof Map<?, ?>) {
      Map<String, Object> map = map(value);
      for (String key : map.keySet()) {
        spots.add(new Spot(map, key));
        collect(map.get(key), spots);
      }
    } else if (value instanceof List<?> list) {
      list.forEach(item -> collect(item, spots));
    }
  }

  @SuppressWarnings("unchecked")
  static Map<String, Object> map(Object value) {
    return (Map<String, Object>) value;
  }

  @SuppressWarnings("unchecked")
  static List<Object> list(Object value) {
    return (List<Object>) value;
  }
}
