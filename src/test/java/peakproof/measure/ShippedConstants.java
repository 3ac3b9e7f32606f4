package peakproof.measure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The constants as {@code rules/measures.yaml} has them, read line by line. */
public final class ShippedConstants {
  private static final Pattern LINE =
      Pattern.compile(
          "([a-z0-9-]+): \\{value: ([^,]+), unit: ([^,]+), from: ([^,]+), to: ([^,]+),"
              + " meaning: \"([^\"]+)\", source: \"([^\"]+)\"\\}");
  private static final Pattern DURATION =
      Pattern.compile("(?:(\\d+)h)?(?:(\\d+)min)?(?:(\\d+)s)?|(\\d+)h(\\d\\d)|(\\d+)min(\\d\\d)");

  private static final Map<String, Entry> ENTRIES = read();
  private static final Constants SHIPPED = new Constants(values());

  private ShippedConstants() {}

  /** One line of the file, its amounts in shares, minutes and metres. */
  record Entry(double value, double from, double to, String text, String meaning, String source) {}

  /** All of them. */
  public static Constants constants() {
    return SHIPPED;
  }

  /** All of them but one, which is changed. */
  public static Constants with(Constant constant, double value) {
    return with(Map.of(constant, value));
  }

  /** All of them but some, which are changed. */
  public static Constants with(Map<Constant, Double> changed) {
    Map<String, Double> values = values();
    changed.forEach((constant, value) -> values.put(constant.word(), value));
    return new Constants(values);
  }

  static Map<String, Double> values() {
    Map<String, Double> values = new LinkedHashMap<>();
    entries().forEach((name, entry) -> values.put(name, entry.value));
    return values;
  }

  static Map<String, Entry> entries() {
    return ENTRIES;
  }

  private static Map<String, Entry> read() {
    Map<String, Entry> entries = new LinkedHashMap<>();
    for (String line : lines()) {
      if (!line.isBlank() && !line.startsWith("#")) {
        Matcher matcher = LINE.matcher(line);
        if (!matcher.matches()) {
          throw new IllegalStateException("cannot read: " + line);
        }
        entries.put(
            matcher.group(1),
            new Entry(
                amount(matcher.group(2)),
                amount(matcher.group(4)),
                amount(matcher.group(5)),
                matcher.group(2),
                matcher.group(6),
                matcher.group(7)));
      }
    }
    return entries;
  }

  private static Iterable<String> lines() {
    try {
      return Files.readAllLines(Path.of("rules", "measures.yaml"), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double amount(String text) {
    if (text.endsWith("%")) {
      return Double.parseDouble(text.substring(0, text.length() - 1)) / 100;
    }
    if (text.endsWith("km")) {
      return 1000 * Double.parseDouble(text.substring(0, text.length() - 2));
    }
    if (text.matches("[0-9.]+")) {
      return Double.parseDouble(text);
    }
    Matcher duration = DURATION.matcher(text);
    if (!duration.matches()) {
      throw new IllegalStateException("no amount: " + text);
    }
    double hours = number(duration.group(1)) + number(duration.group(4));
    double minutes =
        number(duration.group(2)) + number(duration.group(5)) + number(duration.group(6));
    double seconds = number(duration.group(3)) + number(duration.group(7));
    return 60 * hours + minutes + seconds / 60;
  }

  private static double number(String digits) {
    return digits == null ? 0 : Double.parseDouble(digits);
  }
}
