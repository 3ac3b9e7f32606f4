package peakproof.document;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A value in a document with its JSON pointer.
 *
 * @param place of its key, or of the item itself in a list
 */
record Node(String pointer, Place place, Tree tree) {
  Node entry(String key, Tree.Entry entry) {
    return new Node(pointer + "/" + escaped(key), entry.key(), entry.value());
  }

  /** What a step of a JSON pointer leads to; null when there is no such thing. */
  @Nullable Node child(String step) {
    if (tree instanceof Tree.Sequence sequence) {
      return step.matches("0|[1-9][0-9]{0,8}") && Integer.parseInt(step) < sequence.items().size()
          ? items(sequence).get(Integer.parseInt(step))
          : null;
    }
    String key = step.replace("~1", "/").replace("~0", "~");
    Tree.Entry entry = tree.entry(key);
    return entry == null ? null : entry(key, entry);
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
