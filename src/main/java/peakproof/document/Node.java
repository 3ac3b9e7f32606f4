package peakproof.document;

import java.util.ArrayList;
import java.util.List;

/**
 * A value in a document with its JSON pointer.
 *
 * @param place of its key, or of the item itself in a list
 */
record Node(String pointer, Place place, Tree tree) {
  Node entry(String key, Tree.Entry entry) {
    return new Node(pointer + "/" + escaped(key), entry.key(), entry.value());
  }

  List<Node> items(Tree.Sequence sequence) {
    List<Node> nodes = new ArrayList<>();
    for (Tree item : sequence.items()) {
      nodes.add(new Node(pointer + "/" + nodes.size(), item.place(), item));
    }
    return nodes;
  }

  /** A key as JSON pointers (RFC 6901) write it. */
  static String escaped(String key) {
    return key.replace("~", "~0").replace("/", "~1");
  }

  /** True when a fault was already told in place of a value. */
  boolean faulty() {
    return tree instanceof Tree.Scalar scalar && scalar.style() == Tree.Style.FAULTY;
  }
}
