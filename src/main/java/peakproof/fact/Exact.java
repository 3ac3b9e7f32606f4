package peakproof.fact;

import org.jspecify.annotations.Nullable;

/**
 * Takes the dust of floating point off a value, so that rules may compare plainly and at a limit is
 * still not past it: 22 km after 20 km is 10 % longer and not 10.000000000000009 %.
 */
final class Exact {
  private static final double GRAIN = 1e9;

  private Exact() {}

  static @Nullable Double of(@Nullable Double value) {
    return value == null ? null : (Double) of(value.doubleValue());
  }

  static double of(double value) {
    return Math.round(value * GRAIN) / GRAIN;
  }
}
