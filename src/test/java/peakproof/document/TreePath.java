package peakproof.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;

/**
 * The way to a value in a tree: keys, and numbers in lists. Changes give another tree.
 *
 * @param steps from the root
 */
public record TreePath(List<Object> steps) {
  static final TreePath ROOT = new TreePath(List.of());

  /** The ways to all values, the root's first. */
  public static List<TreePath> all(Tree tree) {
    List<TreePath> found = new ArrayList<>();
    ROOT.collect(tree, found);
    return found;
  }

  static List<TreePath> mappings(Tree tree) {
    return all(tree).stream().filter(path -> path.in(tree) instanceof Tree.Mapping).toList();
  }

  private void collect(Tree tree, List<TreePath> found) {
    found.add(this);
    if (tree instanceof Tree.Mapping mapping) {
      mapping.entries().forEach((key, entry) -> child(key).collect(entry.value(), found));
    } else if (tree instanceof Tree.Sequence sequence) {
      for (int i = 0; i < sequence.items().size(); i++) {
        child(i).collect(sequence.items().get(i), found);
      }
    }
  }

  TreePath child(Object step) {
    List<Object> longer = new ArrayList<>(steps);
    longer.add(step);
    return new TreePath(List.copyOf(longer));
  }

  /** What lies there. */
  public Tree in(Tree tree) {
    Tree at = tree;
    for (Object step : steps) {
      at =
          step instanceof Integer index
              ? ((Tree.Sequence) at).items().get(index)
              : Objects.requireNonNull(at.entry((String) step)).value();
    }
    return at;
  }

  /** The tree with another value there; a key that is not written yet is added. */
  public Tree set(Tree tree, Tree value) {
    return changed(tree, 0, value, false);
  }

  /** The tree without that key or item. */
  public Tree without(Tree tree) {
    return changed(tree, 0, tree, true);
  }

  private Tree changed(Tree at, int depth, Tree value, boolean gone) {
    if (depth == steps.size()) {
      return value;
    }
    boolean last = depth == steps.size() - 1;
    if (steps.get(depth) instanceof Integer index) {
      List<Tree> items = new ArrayList<>(((Tree.Sequence) at).items());
      if (last && gone) {
        items.remove((int) index);
      } else {
        items.set(index, changed(items.get(index), depth + 1, value, gone));
      }
      return new Tree.Sequence(at.place(), items);
    }
    String key = (String) steps.get(depth);
    Map<String, Tree.Entry> entries = new LinkedHashMap<>(((Tree.Mapping) at).entries());
    if (last && gone) {
      entries.remove(key);
    } else {
      Tree.Entry entry = entries.get(key);
      Tree inside = entry == null ? value : changed(entry.value(), depth + 1, value, gone);
      entries.put(key, new Tree.Entry(entry == null ? at.place() : entry.key(), inside));
    }
    return new Tree.Mapping(at.place(), entries);
  }

  /** True where keys are dates or names of the user's own: of a log, of settings, of a house. */
  boolean takesAnyKey() {
    return toString()
        .matches(
            "log/(weeks|days)|house/(severity|at-most|sessions|words)|[a-z]+/settings(/[^/]*)?");
  }

  /** The same for all mappings that take the same keys: numbers, days and rules apart. */
  String shape(Tree tree) {
    StringBuilder shape = new StringBuilder();
    for (Object step : steps) {
      String word = step instanceof Integer ? "*" : (String) step;
      boolean day = Dates.WEEKDAYS.contains(word) || word.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}");
      shape.append('/').append(day ? "DAY" : word);
    }
    TreeSet<String> kinds = new TreeSet<>(((Tree.Mapping) in(tree)).entries().keySet());
    kinds.retainAll(
        List.of("swim", "bike", "run", "strength", "other", "race", "rest", "warning", "like"));
    return shape + " " + kinds;
  }

  @Override
  public String toString() {
    return String.join("/", steps.stream().map(Object::toString).toList());
  }
}
