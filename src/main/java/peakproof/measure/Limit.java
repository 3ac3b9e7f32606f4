package peakproof.measure;

/** Unrounded comparison: at a limit, give or take 1e-9, is not past it. */
public final class Limit {
  private static final double TOLERANCE = 1e-9;

  private Limit() {}

  /** True when the value is past the limit upwards. */
  public static boolean above(double value, double limit) {
    return value > limit + TOLERANCE;
  }

  /** True when the value is past the limit downwards. */
  public static boolean below(double value, double limit) {
    return value < limit - TOLERANCE;
  }

  /** True from one limit to the other, both included; false of what is no number. */
  static boolean within(double value, double from, double to) {
    return value >= from - TOLERANCE && value <= to + TOLERANCE;
  }

  /** True above zero, if not beyond all bounds; false of what is no number. */
  static boolean positive(double value) {
    return value > 0 && value < Double.POSITIVE_INFINITY;
  }

  /** True from zero, if not beyond all bounds; false of what is no number. */
  static boolean countable(double value) {
    return value >= 0 && value < Double.POSITIVE_INFINITY;
  }
}
