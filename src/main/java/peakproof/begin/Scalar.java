package peakproof.begin;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Values as they are written into YAML. */
final class Scalar {
  private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}./][\\p{L}\\p{N} ._/+%:-]*");
  private static final Set<String> NOTHING = Set.of("null");

  private Scalar() {}

  /** The text as one value, in quotes where it would be read as something else without them. */
  static String of(String text) {
    String trimmed = text.strip();
    boolean plain =
        PLAIN.matcher(trimmed).matches()
            && !trimmed.contains(": ")
            && !trimmed.endsWith(":")
            && !NOTHING.contains(trimmed.toLowerCase(Locale.ROOT));
    return plain ? trimmed : quoted(trimmed);
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints().forEach(point -> quoted.append(escaped(point)));
    return quoted.append('"').toString();
  }

  private static String escaped(int point) {
    if (point == '"' || point == '\\') {
      return "\\" + (char) point;
    }
    return Character.isISOControl(point)
        ? String.format(Locale.ROOT, "\\u%04x", point)
        : Character.toString(point);
  }

  /** Minutes as a coach writes them: {@code 45min}, {@code 1h}, {@code 2h05}. */
  static String duration(int minutes) {
    if (minutes < 60) {
      return minutes + "min";
    }
    int rest = minutes % 60;
    return minutes / 60 + "h" + (rest == 0 ? "" : String.format(Locale.ROOT, "%02d", rest));
  }
}
