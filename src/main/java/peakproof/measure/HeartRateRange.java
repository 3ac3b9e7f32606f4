package peakproof.measure;

import org.jspecify.annotations.Nullable;

/**
 * Heart rate between rest and maximum. The maximum differs by sport: usually 3 to 8 beats lower on
 * the bike than running, 8 to 15 swimming (common practice). Beta-blockers, heat, illness, caffeine
 * and altitude break the relation to effort.
 *
 * @param resting beats a minute, 30 to 100; null when unknown
 * @param maximum beats a minute, 120 to 225; null when unknown
 * @param estimated true when the maximum is only an age's mean: individuals lie 10 to 12 beats off
 * @param because what of it is unknown and why; empty when nothing is
 */
public record HeartRateRange(
    @Nullable Double resting, @Nullable Double maximum, boolean estimated, String because) {

  /**
   * The range of an athlete; without a measured maximum that of the age, 208 − 0.7 × age (Tanaka
   * 2001, JACC 37:153, from memory).
   *
   * @param age years; null when unknown
   */
  public static HeartRateRange of(
      @Nullable Double resting,
      @Nullable Double maximum,
      @Nullable Double age,
      Constants constants) {
    boolean estimated = maximum == null;
    Double most = estimated ? estimate(age, constants) : maximum;
    boolean mostSound =
        most != null
            && Limit.within(
                most,
                constants.of(Constant.HEART_MAXIMUM_FROM),
                constants.of(Constant.HEART_MAXIMUM_TO));
    boolean restSound =
        resting != null
            && Limit.within(
                resting,
                constants.of(Constant.HEART_RESTING_FROM),
                constants.of(Constant.HEART_RESTING_TO));
    String because = mostSound ? "" : "a measured maximum heart rate";
    if (!restSound) {
      because += (because.isEmpty() ? "" : ", ") + "a measured resting heart rate";
    }
    return new HeartRateRange(
        restSound ? resting : null, mostSound ? most : null, estimated && mostSound, because);
  }

  /** Share of the maximum, 0.78 for 78 %; up to 3 beats above the maximum are taken. */
  public Amount shareOfMaximum(double bpm, Constants constants) {
    if (maximum == null) {
      return Amount.unknown(because);
    }
    double most = maximum + constants.of(Constant.HEART_ABOVE_MAXIMUM);
    return bpm > 0 && !Limit.above(bpm, most)
        ? Amount.of(bpm / maximum)
        : Amount.unknown("a heart rate up to the maximum");
  }

  /** Share of the reserve between rest and maximum, 0 to 1 (Karvonen 1957, from memory). */
  public Amount shareOfReserve(double bpm, Constants constants) {
    if (maximum == null || resting == null) {
      return Amount.unknown(because);
    }
    double most = maximum + constants.of(Constant.HEART_ABOVE_MAXIMUM);
    return bpm > resting && !Limit.above(bpm, most)
        ? Amount.of((bpm - resting) / (maximum - resting))
        : Amount.unknown("a heart rate from rest to the maximum");
  }

  /** Beats a minute at a share of the maximum, 0 to 1. */
  public Amount atShareOfMaximum(double share) {
    if (maximum == null) {
      return Amount.unknown(because);
    }
    return Limit.within(share, 0, 1)
        ? Amount.of(share * maximum)
        : Amount.unknown("a share of up to 100 %");
  }

  /** Beats a minute at a share of the reserve, 0 to 1 (Karvonen 1957, from memory). */
  public Amount atShareOfReserve(double share) {
    if (maximum == null || resting == null) {
      return Amount.unknown(because);
    }
    return Limit.within(share, 0, 1)
        ? Amount.of(resting + share * (maximum - resting))
        : Amount.unknown("a share of up to 100 %");
  }

  private static @Nullable Double estimate(@Nullable Double age, Constants constants) {
    return age == null
        ? null
        : (Double)
            (constants.of(Constant.HEART_AGE_BASE) - constants.of(Constant.HEART_AGE_YEAR) * age);
  }
}
