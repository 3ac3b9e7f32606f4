package peakproof.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Reads a mapping key by key. Every key that is asked for is known; {@link #finish} tells the
 * others and the required ones that are missing.
 */
final class Fields {
  private static final int LISTED_KEYS = 12;

  private final Desk desk;
  private final Node node;
  private final Tree.Mapping mapping;
  private final String owner;
  private final Set<String> known = new LinkedHashSet<>();
  private final Set<String> refused = new LinkedHashSet<>();
  private final Map<String, String> missing = new LinkedHashMap<>();

  Fields(Desk desk, Node node, Tree.Mapping mapping, String owner) {
    this.desk = desk;
    this.node = node;
    this.mapping = mapping;
    this.owner = owner;
  }

  String pointer() {
    return node.pointer();
  }

  Place place() {
    return node.place();
  }

  boolean empty() {
    return mapping.entries().isEmpty();
  }

  /** True when the key is written, soundly or not. */
  boolean has(String key) {
    known.add(key);
    return !refused.contains(key) && mapping.entries().containsKey(key);
  }

  /** The key's value; null when it is not written, was refused or its fault was told. */
  @Nullable Node node(String key) {
    if (refused.contains(key)) {
      return null;
    }
    known.add(key);
    Tree.Entry entry = mapping.entries().get(key);
    Node value = entry == null ? null : node.entry(key, entry);
    return value == null || value.faulty() ? null : value;
  }

  /** Where the key stands; where the mapping does when it is not written. */
  Place keyPlace(String key) {
    Tree.Entry entry = mapping.entries().get(key);
    return entry == null ? node.place() : entry.key();
  }

  <T> @Nullable T read(String key, Function<String, Quantity<T>> read) {
    Node value = node(key);
    return value == null ? null : desk.value(value, read);
  }

  /** As {@link #read}; a fault when the key is not written. */
  <T> @Nullable T require(String key, String example, Function<String, Quantity<T>> read) {
    demand(key, example);
    return read(key, read);
  }

  /** Tells a fault at {@link #finish} when the key is not written. */
  void demand(String key, String example) {
    if (!has(key)) {
      missing.put(key, example);
    }
  }

  /** Free text. */
  @Nullable String text(String key) {
    return read(key, Quantity.Of::new);
  }

  boolean yes(String key) {
    return Boolean.TRUE.equals(read(key, Quantity::flag));
  }

  @Nullable Fields mapping(String key, String name) {
    Node value = node(key);
    return value == null ? null : desk.fields(value, name);
  }

  List<Node> list(String key) {
    Node value = node(key);
    return value == null ? List.of() : desk.items(value);
  }

  Set<String> words(String key, Words words) {
    return desk.words(list(key), words::read);
  }

  /** The words of a list; null when the key is not written. */
  @Nullable Set<String> listedWords(String key, Words words) {
    return has(key) ? words(key, words) : null;
  }

  /** Every key that is written with its value, whatever it is called. */
  Map<String, Node> all() {
    Map<String, Node> nodes = new LinkedHashMap<>();
    mapping.entries().forEach((key, entry) -> nodes.put(key, node.entry(key, entry)));
    known.addAll(nodes.keySet());
    return nodes;
  }

  /** Keys that belong elsewhere: a fault of their own for each that is written. */
  void refuse(List<String> keys, String where, String instead) {
    for (String key : keys) {
      if (mapping.entries().containsKey(key)) {
        desk.fault(
            keyPlace(key),
            "'" + key + "' is not a key of " + owner,
            "expected it " + where + " only",
            instead);
      }
    }
    refused.addAll(keys);
  }

  /** True when a key is written that nothing asked for so far. */
  boolean strange() {
    return !strangers().isEmpty();
  }

  private List<String> strangers() {
    List<String> strangers = new ArrayList<>(mapping.entries().keySet());
    strangers.removeAll(known);
    strangers.removeAll(refused);
    return strangers;
  }

  /** Tells the unknown keys, and the missing ones that no unknown key was meant to be. */
  void finish() {
    finish("write one of these, or leave the line out");
  }

  /**
   * As {@link #finish()}.
   *
   * @param advice what to write instead of a key that is near none
   */
  void finish(String advice) {
    for (String key : strangers()) {
      String near = Nearest.among(key, known);
      if (near != null) {
        missing.remove(near);
      }
      desk.fault(
          keyPlace(key),
          "'" + key + "' is not a key of " + owner,
          "expected " + listedKeys(),
          Nearest.advice(key, known, advice));
    }
    missing.forEach(
        (key, example) ->
            desk.fault(
                node.place(),
                owner + " has no '" + key + "'",
                "expected '" + key + ":' among its keys",
                "write '" + key + ": " + example + "'"));
  }

  private String listedKeys() {
    List<String> keys = List.copyOf(known);
    return keys.size() <= LISTED_KEYS
        ? Words.listed(keys)
        : String.join(", ", keys.subList(0, LISTED_KEYS)) + " …";
  }
}
