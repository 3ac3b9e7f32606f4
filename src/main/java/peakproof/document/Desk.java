package peakproof.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Where the documents of one plan are read: what all readers share.
 *
 * @param marks places of pointers that are written inside a text, such as the sessions of a
 *     one-line day
 * @param kit the kit words, the club's own among them
 * @param practise the skills, the club's own among them
 * @param sessions the club's named sessions, as written in its house file
 */
record Desk(
    Faults faults,
    Map<String, Place> marks,
    Words kit,
    Words practise,
    Map<String, Tree.Scalar> sessions) {
  /** One for documents that come before a house file is known. */
  static Desk plain(Faults faults, Map<String, Place> marks) {
    return new Desk(faults, marks, Vocabulary.KIT, Vocabulary.PRACTISE, Map.of());
  }

  /** The value's keys; null, and a fault told, when it is no mapping. */
  @Nullable Fields fields(Node node, String owner) {
    if (node.tree() instanceof Tree.Mapping mapping) {
      return new Fields(this, node, mapping, owner);
    }
    if (node.tree() instanceof Tree.Sequence) {
      fault(
          node.place(),
          owner + " holds a list",
          "expected keys with values",
          "leave the '- ' or the [ ] out");
    } else if (!node.faulty()) {
      fault(
          node.place(),
          owner + " needs keys of its own",
          "expected 'key: value' lines below it, or { }",
          "write them one a line, indented");
    }
    return null;
  }

  /** A single value; null, and a fault told, when it is none. */
  <T> @Nullable T value(Node node, Function<String, Quantity<T>> read) {
    Tree.Scalar scalar = scalar(node);
    if (scalar == null) {
      return null;
    }
    Quantity<T> quantity = read.apply(scalar.text().strip());
    if (quantity instanceof Quantity.NotThat<T> not) {
      faults.add(not.at(scalar.place()));
    }
    return quantity.orNull();
  }

  /** The text of a single value; null, and a fault told unless it was, when it is none. */
  Tree.@Nullable Scalar scalar(Node node) {
    if (node.tree() instanceof Tree.Scalar scalar) {
      return node.faulty() ? null : scalar;
    }
    String key = node.pointer().substring(node.pointer().lastIndexOf('/') + 1);
    boolean list = node.tree() instanceof Tree.Sequence;
    fault(
        node.place(),
        "'" + key + "' holds " + (list ? "a list" : "keys of its own"),
        "expected one value",
        "write it on the same line: '" + key + ": VALUE'");
    return null;
  }

  /** A list's items; empty, and a fault told, when it is no list. */
  List<Node> items(Node node) {
    if (node.tree() instanceof Tree.Sequence sequence) {
      return node.items(sequence);
    }
    if (!node.faulty()) {
      String key = node.pointer().substring(node.pointer().lastIndexOf('/') + 1);
      fault(
          node.tree().place(),
          "'" + key + "' is a list",
          "expected [ ] or lines that begin with '- '",
          node.tree() instanceof Tree.Scalar scalar
              ? "write " + key + ": [" + scalar.text().strip().replaceFirst("^none$", "") + "]"
              : "write '- ' before each item");
    }
    return List.of();
  }

  /** The words of a list, in its order. */
  Set<String> words(List<Node> items, Function<String, Quantity<String>> read) {
    Set<String> words = new LinkedHashSet<>();
    for (Node item : items) {
      String word = value(item, read);
      if (word != null) {
        words.add(word);
      }
    }
    return Collections.unmodifiableSet(words);
  }

  /** What each item of a list reads as; items with faults are left out. */
  <T> List<T> each(List<Node> items, Function<Node, @Nullable T> read) {
    List<T> values = new ArrayList<>();
    for (Node item : items) {
      T value = read.apply(item);
      if (value != null) {
        values.add(value);
      }
    }
    return Collections.unmodifiableList(values);
  }

  void fault(Place place, String what, String expected, String instead) {
    faults.add(new Fault(place, what, expected, instead));
  }
}
