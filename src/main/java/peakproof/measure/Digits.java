package peakproof.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers as digits, the same everywhere. Every plan is full of them, and Java's own formatter
 * takes longer over one than the arithmetic that leads to it.
 */
public final class Digits {
  private Digits() {}

  /** A number of seconds as {@code 1:45} or, from an hour on, {@code 3:18:04}. */
  public static String clock(double seconds) {
    long whole = Math.round(seconds);
    return whole < 3600
        ? whole / 60 + ":" + two(whole % 60)
        : whole / 3600 + ":" + two(whole / 60 % 60) + ":" + two(whole % 60);
  }

  /** A whole number with two digits at least: {@code 07}, {@code 42}. */
  public static String two(long number) {
    return number < 10 && number >= 0 ? "0" + number : String.valueOf(number);
  }

  /** So many digits behind the point, a half rounded away from zero: {@code 0.28}, {@code 7.0}. */
  public static String fixed(double number, int digits) {
    return Double.isFinite(number)
        ? BigDecimal.valueOf(number).setScale(digits, RoundingMode.HALF_UP).toPlainString()
        : String.valueOf(number);
  }
}
