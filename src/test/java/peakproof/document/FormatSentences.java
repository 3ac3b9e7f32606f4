package peakproof.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The words that {@code docs/format.md} has for keys, as plain text. */
final class FormatSentences {
  private static final Pattern ROW = Pattern.compile("^\\| (`[^|]+`) \\| ([^|]*) \\|$");
  private static final Pattern KEY = Pattern.compile("`([a-z-]+)`");

  private final Map<String, String> rows;

  private FormatSentences(Map<String, String> rows) {
    this.rows = rows;
  }

  /** Those of the tables under a heading. */
  static FormatSentences under(String heading) {
    try {
      Map<String, String> rows = new LinkedHashMap<>();
      boolean within = false;
      for (String line : Files.readAllLines(Path.of("docs/format.md"), StandardCharsets.UTF_8)) {
        within = line.startsWith("#") ? line.equals(heading) : within;
        Matcher row = ROW.matcher(line);
        if (within && row.matches()) {
          KEY.matcher(row.group(1)).results().forEach(key -> rows.put(key.group(1), row.group(2)));
        }
      }
      return new FormatSentences(Collections.unmodifiableMap(rows));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** What stands for a key; null when the page leaves it to the key's name. */
  @Nullable String of(String key) {
    String row = rows.get(key);
    return row == null || row.isBlank() ? null : plain(row);
  }

  /** Those of the keys below a key: each part of its row that names one. */
  FormatSentences within(String owner) {
    Map<String, String> inside = new LinkedHashMap<>();
    for (String part : rows.getOrDefault(owner, "").split(" · ")) {
      Matcher key = KEY.matcher(part);
      if (key.lookingAt()) {
        String rest = part.substring(key.end()).replaceFirst("^: ", "").strip();
        inside.putIfAbsent(key.group(1), rest);
      }
    }
    return new FormatSentences(inside);
  }

  private static String plain(String words) {
    return words.replaceAll("\\[([^\\]]+)\\]\\([^)]*\\)", "$1").replace("`", "");
  }
}
