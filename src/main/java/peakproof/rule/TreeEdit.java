package peakproof.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Tree;

/**
 * Puts something else at a path of a document. A path names keys, the numbers of list items from 0,
 * and weeks by their Monday; {@code gone} takes the entry away.
 */
final class TreeEdit {
  private static final String GONE = "gone";
  private static final String STARTS = "starts";

  private TreeEdit() {}

  /** Why a path leads nowhere. */
  static final class NoSuchPath extends Exception {
    private static final long serialVersionUID = 1;

    NoSuchPath(String message) {
      super(message);
    }
  }

  static Tree at(Tree tree, List<String> path, Tree replacement) throws NoSuchPath {
    if (path.isEmpty()) {
      return replacement;
    }
    String step = path.get(0);
    List<String> rest = path.subList(1, path.size());
    if (tree instanceof Tree.Mapping mapping) {
      return inMapping(mapping, step, rest, replacement);
    }
    if (tree instanceof Tree.Sequence sequence) {
      return inSequence(sequence, step, rest, replacement);
    }
    throw new NoSuchPath("'" + step + "' lies below a plain text");
  }

  static boolean gone(Tree replacement) {
    return replacement instanceof Tree.Scalar scalar && scalar.text().equals(GONE);
  }

  private static Tree inMapping(
      Tree.Mapping mapping, String key, List<String> rest, Tree replacement) throws NoSuchPath {
    Map<String, Tree.Entry> entries = new LinkedHashMap<>(mapping.entries());
    Tree.Entry entry = entries.get(key);
    if (rest.isEmpty() && gone(replacement)) {
      if (entries.remove(key) == null) {
        throw new NoSuchPath("there is no '" + key + "' to take away");
      }
    } else if (entry == null && !rest.isEmpty()) {
      Tree.Mapping empty = new Tree.Mapping(replacement.place(), Map.of());
      entries.put(key, new Tree.Entry(replacement.place(), at(empty, rest, replacement)));
    } else {
      Tree below = entry == null ? replacement : at(entry.value(), rest, replacement);
      entries.put(key, new Tree.Entry(entry == null ? replacement.place() : entry.key(), below));
    }
    return new Tree.Mapping(mapping.place(), entries);
  }

  private static Tree inSequence(
      Tree.Sequence sequence, String step, List<String> rest, Tree replacement) throws NoSuchPath {
    List<Tree> items = new ArrayList<>(sequence.items());
    int index = index(items, step);
    if (index < 0) {
      throw new NoSuchPath("there is no item '" + step + "' in the list");
    }
    if (rest.isEmpty() && gone(replacement)) {
      if (index == items.size()) {
        throw new NoSuchPath("there is no item '" + step + "' to take away");
      }
      items.remove(index);
    } else if (index == items.size()) {
      items.add(at(new Tree.Mapping(replacement.place(), Map.of()), rest, replacement));
    } else {
      items.set(index, at(items.get(index), rest, replacement));
    }
    return new Tree.Sequence(sequence.place(), items);
  }

  /** The number of an item; one past the end adds one. */
  private static int index(List<Tree> items, String step) {
    for (int i = 0; i < items.size(); i++) {
      if (step.equals(starts(items.get(i)))) {
        return i;
      }
    }
    if (step.matches("\\d{1,3}")) {
      int index = Integer.parseInt(step);
      return index <= items.size() ? index : -1;
    }
    return step.matches("\\d{4}-\\d\\d-\\d\\d") ? items.size() : -1;
  }

  private static @Nullable String starts(Tree item) {
    return item instanceof Tree.Mapping mapping
            && mapping.entries().get(STARTS) != null
            && mapping.entries().get(STARTS).value() instanceof Tree.Scalar scalar
        ? scalar.text()
        : null;
  }
}
