package peakproof.measure;

import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;

/**
 * Whether the mean of a whole session lies where a slip of units would not: 55 to 240 s/100 m
 * swimming, 150 to 600 s/km running, 10 to 60 km/h riding (common practice, no source).
 */
public final class UnitSlip {
  private UnitSlip() {}

  /**
   * True when it looks like a slip; null for other sports, and without a distance and a time above
   * zero.
   */
  public static @Nullable Boolean of(
      Sport sport, double metres, double seconds, Constants constants) {
    if (!Limit.positive(metres) || !Limit.positive(seconds)) {
      return null;
    }
    return switch (sport) {
      case SWIM ->
          outside(
              100 * seconds / metres,
              Constant.PLAUSIBLE_SWIM_FROM,
              Constant.PLAUSIBLE_SWIM_TO,
              constants);
      case RUN ->
          outside(
              1000 * seconds / metres,
              Constant.PLAUSIBLE_RUN_FROM,
              Constant.PLAUSIBLE_RUN_TO,
              constants);
      case BIKE ->
          outside(
              Pace.KMH * metres / seconds,
              Constant.PLAUSIBLE_RIDE_FROM,
              Constant.PLAUSIBLE_RIDE_TO,
              constants);
      case STRENGTH, OTHER -> null;
    };
  }

  private static boolean outside(double mean, Constant from, Constant to, Constants constants) {
    return !Limit.within(mean, constants.of(from), constants.of(to));
  }
}
