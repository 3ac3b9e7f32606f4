package peakproof.measure;

import java.util.Locale;

/** Amounts as they stand in the arithmetic of a forecast. */
final class InWords {
  private InWords() {}

  /** {@code 1:45}, {@code 3:18:04}. */
  static String clock(double seconds) {
    long whole = Math.round(seconds);
    return whole < 3600
        ? String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60)
        : String.format(Locale.ROOT, "%d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60);
  }

  /** {@code 65 %}, {@code 7.5 %}. */
  static String percent(double share) {
    return trimmed(String.format(Locale.ROOT, share < 0.1 ? "%.1f" : "%.0f", 100 * share)) + " %";
  }

  /** {@code 62}, {@code 30.1}, {@code 0.28}, {@code 0.004}. */
  static String number(double number) {
    double size = Math.abs(number);
    String form = size < 0.1 ? "%.4f" : size < 10 ? "%.2f" : "%.1f";
    return trimmed(String.format(Locale.ROOT, form, number));
  }

  private static String trimmed(String text) {
    return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
  }

  /** {@code 2 to 6}, the values of two constants. */
  static String span(Constant from, Constant to, Constants constants) {
    return number(constants.of(from)) + " to " + number(constants.of(to));
  }
}
