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
}
