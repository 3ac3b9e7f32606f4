package peakproof.document;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The kinds of document, told apart by their first key. */
enum DocumentKind {
  PLAN,
  LOG,
  EVENT,
  HOUSE,
  MAPPING;

  private static final List<String> KEYS = Stream.of(values()).map(DocumentKind::key).toList();

  private final Pattern firstLine =
      Pattern.compile(
          "\\s*\\{?\\s*[\"']?" + name().toLowerCase(Locale.ROOT) + "[\"']?\\s*:(?:\\s.*)?");

  String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** True when the first line of a text that says anything begins a document of this kind. */
  boolean begins(String text) {
    return text.lines()
        .map(line -> line.startsWith("\uFEFF") ? line.substring(1) : line)
        .filter(line -> !line.isBlank() && !line.stripLeading().startsWith("#"))
        .filter(line -> !line.startsWith("---") && !line.startsWith("%"))
        .findFirst()
        .filter(line -> firstLine.matcher(line).matches())
        .isPresent();
  }

  /** What stands under the first key; null, and a fault told, when it is not this kind's. */
  @Nullable Node content(Tree tree, Faults faults) {
    if (!(tree instanceof Tree.Mapping mapping) || mapping.entries().isEmpty()) {
      faults.add(
          tree.place(),
          "this is not a " + key(),
          "expected a document that begins with '" + key() + ":'",
          "write '" + key() + ":' first and everything else indented below it");
      return null;
    }
    Map.Entry<String, Tree.Entry> first = mapping.entries().entrySet().iterator().next();
    if (!first.getKey().equals(key())) {
      wrongKind(first.getKey(), first.getValue().key(), faults);
      return null;
    }
    mapping.entries().keySet().stream()
        .filter(other -> !other.equals(key()))
        .findFirst()
        .ifPresent(other -> beside(other, mapping.entries(), faults));
    Node node = new Node("/" + key(), first.getValue().key(), first.getValue().value());
    return node.faulty() ? null : node;
  }

  private void wrongKind(String first, Place place, Faults faults) {
    boolean known = KEYS.contains(first);
    faults.add(
        place,
        known ? "this is a file of kind '" + first + "'" : "'" + first + "' begins no document",
        "expected '" + key() + ":' as its first key",
        known
            ? "name the file that begins with '" + key() + ":'"
            : Nearest.advice(
                first, KEYS, "write '" + key() + ":' first and everything else indented below it"));
  }

  private void beside(String other, Map<String, Tree.Entry> entries, Faults faults) {
    boolean known = KEYS.contains(other);
    Place place = Objects.requireNonNull(entries.get(other)).key();
    faults.add(
        place,
        "'" + other + "' stands beside '" + key() + "', not under it",
        known
            ? "expected one document in a file"
            : "expected every key indented below '" + key() + ":'",
        known ? "put it in a file of its own" : "indent it and the lines after it by two spaces");
  }
}
