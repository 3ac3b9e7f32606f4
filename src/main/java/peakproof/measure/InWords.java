package peakproof.measure;

/** Amounts as they stand in the arithmetic of a forecast. */
final class InWords {
  private InWords() {}

  /** {@code 65 %}, {@code 7.5 %}. */
  static String percent(double share) {
    return trimmed(Digits.fixed(100 * share, share < 0.1 ? 1 : 0)) + " %";
  }

  /** {@code 62}, {@code 30.1}, {@code 0.28}, {@code 0.004}. */
  static String number(double number) {
    double size = Math.abs(number);
    return trimmed(Digits.fixed(number, size < 0.1 ? 4 : size < 10 ? 2 : 1));
  }

  private static String trimmed(String text) {
    return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
  }

  /** {@code 2 to 6}, the values of two constants. */
  static String span(Constant from, Constant to, Constants constants) {
    return number(constants.of(from)) + " to " + number(constants.of(to));
  }
}
