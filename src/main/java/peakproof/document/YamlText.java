package peakproof.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Writes values the way the documents are written by hand: a key a line, what holds single values
 * only in one line's brackets.
 */
final class YamlText {
  private static final String STEP = "  ";

  private YamlText() {}

  /** A key with its value; lines below it are indented. */
  static List<String> entry(String key, YamlValue value) {
    if (value instanceof YamlValue.Keys keys && !flat(keys.entries().values())) {
      return below(scalar(key, false) + ":", entries(keys));
    }
    if (value instanceof YamlValue.Items items && !flat(items.items())) {
      List<String> lines = new ArrayList<>();
      items.items().forEach(item -> lines.addAll(item(item)));
      return below(scalar(key, false) + ":", lines);
    }
    return List.of(
        scalar(key, false)
            + ": "
            + (value instanceof YamlValue.Text text
                ? scalar(text.text(), false)
                : inBrackets(value)));
  }

  private static List<String> below(String heading, List<String> lines) {
    List<String> all = new ArrayList<>(List.of(heading));
    lines.forEach(line -> all.add(STEP + line));
    return all;
  }

  /** All keys of a mapping, one below the other. */
  static List<String> entries(YamlValue.Keys keys) {
    List<String> lines = new ArrayList<>();
    keys.entries().forEach((key, value) -> lines.addAll(entry(key, value)));
    return lines;
  }

  /** A list's item. */
  static List<String> item(YamlValue value) {
    List<String> lines = new ArrayList<>();
    if (value instanceof YamlValue.Keys keys && !keys.entries().isEmpty()) {
      entries(keys).forEach(line -> lines.add((lines.isEmpty() ? "- " : STEP) + line));
    } else {
      lines.add(
          "- "
              + (value instanceof YamlValue.Text text
                  ? scalar(text.text(), false)
                  : inBrackets(value)));
    }
    return lines;
  }

  private static boolean flat(Iterable<YamlValue> values) {
    for (YamlValue value : values) {
      if (!(value instanceof YamlValue.Text)) {
        return false;
      }
    }
    return true;
  }

  /** A value as it stands in brackets. */
  static String inBrackets(YamlValue value) {
    if (value instanceof YamlValue.Keys keys) {
      return keys.entries().entrySet().stream()
          .map(YamlText::entryInBrackets)
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (value instanceof YamlValue.Items items) {
      return items.items().stream()
          .map(YamlText::inBrackets)
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return scalar(((YamlValue.Text) value).text(), true);
  }

  private static String entryInBrackets(Map.Entry<String, YamlValue> entry) {
    return entryInBrackets(entry.getKey(), entry.getValue());
  }

  /** A key with its value as they stand in brackets. */
  static String entryInBrackets(String key, YamlValue value) {
    return scalar(key, true) + ": " + inBrackets(value);
  }

  /** Plain where every reader of YAML takes it for this text, else in single quotes. */
  private static String scalar(String text, boolean bracketed) {
    boolean plain =
        !text.isEmpty()
            && Character.isLetterOrDigit(text.codePointAt(0))
            && !text.equals("null")
            && !text.endsWith(":")
            && text.equals(text.strip())
            && !text.contains(": ")
            && !text.contains(" #")
            && !(bracketed && text.chars().anyMatch(c -> ",[]{}".indexOf(c) >= 0));
    return plain ? text : "'" + text.replace("'", "''") + "'";
  }
}
