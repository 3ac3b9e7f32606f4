package peakproof.document;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Bare numbers, ratings and flags. */
final class Numbers {
  /** Digits enough for any quantity here, few enough that no sum can overflow. */
  static final String NUMBER = "[0-9]{1,7}(?:\\.[0-9]{1,6})?";

  private static final Pattern PLAIN = Pattern.compile(NUMBER);
  private static final Pattern WHOLE = Pattern.compile("[0-9]{1,7}");
  private static final Pattern SIGNED = Pattern.compile("[+-]?[0-9]{1,7}");

  private Numbers() {}

  static Quantity<Double> number(String text) {
    return PLAIN.matcher(text).matches()
        ? new Quantity.Of<>(Double.valueOf(text))
        : new Quantity.NotThat<>(
            "'" + text + "' is no number", "expected a number such as 8 or 2.5", point(text));
  }

  static Quantity<Integer> count(String text) {
    return WHOLE.matcher(text).matches()
        ? new Quantity.Of<>(Integer.valueOf(text))
        : new Quantity.NotThat<>(
            "'" + text + "' is no whole number",
            "expected a number such as 3",
            "write digits only");
  }

  static Quantity<Integer> signed(String text) {
    return SIGNED.matcher(text).matches()
        ? new Quantity.Of<>(Integer.valueOf(text))
        : new Quantity.NotThat<>(
            "'" + text + "' is no whole number",
            "expected a number such as 0, +6 or -6",
            "write digits only, with '+' or '-' before them");
  }

  static Quantity<Double> rating(String text) {
    return rating(text, text);
  }

  /** A rating that is written with more than its number, such as {@code rpe6}. */
  static Quantity<Double> rating(String text, String written) {
    if (PLAIN.matcher(text).matches()) {
      double value = Double.parseDouble(text);
      if (value <= 10 && value * 2 == Math.rint(value * 2)) {
        return new Quantity.Of<>(value);
      }
    }
    return new Quantity.NotThat<>(
        "'" + written + "' is no rating",
        "expected a number from 0 to 10, halves allowed",
        text.startsWith("rpe") || text.contains("/") ? "write the number alone" : point(text));
  }

  static Quantity<Boolean> flag(String text) {
    return switch (text) {
      case "yes", "true" -> new Quantity.Of<>(true);
      case "no", "false" -> new Quantity.Of<>(false);
      default ->
          new Quantity.NotThat<>(
              "'" + text + "' is neither yes nor no",
              "expected yes or no",
              switch (text.toLowerCase(Locale.ROOT)) {
                case "y", "on", "1" -> "write yes";
                case "n", "off", "0" -> "write no";
                default ->
                    Nearest.advice(text, List.of("yes", "no", "true", "false"), "write yes or no");
              });
    };
  }

  private static String point(String text) {
    String dotted = text.replace(',', '.');
    return !dotted.equals(text) && PLAIN.matcher(dotted).matches()
        ? "write " + dotted
        : "write digits, with a point for decimals";
  }
}
