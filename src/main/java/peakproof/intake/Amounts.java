package peakproof.intake;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Amounts as a log writes them. */
final class Amounts {
  private Amounts() {}

  /** A duration to the second: {@code 49min}, {@code 1h05}, {@code 1h02min13s}. */
  static String duration(double seconds) {
    long whole = Math.round(seconds);
    long h = whole / 3600;
    long min = whole % 3600 / 60;
    long s = whole % 60;
    if (h > 0 && s == 0) {
      return min == 0 ? h + "h" : String.format(Locale.ROOT, "%dh%02d", h, min);
    }
    String minutes = h > 0 ? String.format(Locale.ROOT, "%dh%02dmin", h, min) : min + "min";
    return (h == 0 && min == 0 ? "" : minutes) + (s == 0 ? "" : s + "s");
  }

  /** Metres as metres in the water, else as kilometres to ten metres. */
  static String distance(double metres, boolean swum) {
    return swum ? Math.round(metres) + "m" : decimal(metres / 1000, 2) + "km";
  }

  /** A number with so many decimals at most. */
  static String decimal(double number, int decimals) {
    BigDecimal rounded =
        new BigDecimal(number).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
  }
}
