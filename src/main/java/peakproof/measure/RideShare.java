package peakproof.measure;

/**
 * The share of critical power at which the bike leg of a distance is usually held (common practice,
 * no source): above it, the run pays.
 */
public enum RideShare {
  BELOW,
  WITHIN,
  ABOVE;

  /** The band of a distance, 0.65 for 65 %. */
  public static Band band(DistanceClass distance, Constants constants) {
    return switch (distance) {
      case FULL -> band(Constant.RIDE_SHARE_FULL_FROM, Constant.RIDE_SHARE_FULL_TO, constants);
      case HALF -> band(Constant.RIDE_SHARE_HALF_FROM, Constant.RIDE_SHARE_HALF_TO, constants);
      case STANDARD ->
          band(Constant.RIDE_SHARE_STANDARD_FROM, Constant.RIDE_SHARE_STANDARD_TO, constants);
      case SPRINT ->
          band(Constant.RIDE_SHARE_SPRINT_FROM, Constant.RIDE_SHARE_SPRINT_TO, constants);
    };
  }

  /** Where a share lies; both ends of the band are within it, and what is no number is below. */
  public static RideShare of(double share, DistanceClass distance, Constants constants) {
    Band band = band(distance, constants);
    if (band.to() != null && Limit.above(share, band.to())) {
      return ABOVE;
    }
    boolean within =
        band.from() != null && band.to() != null && Limit.within(share, band.from(), band.to());
    return within ? WITHIN : BELOW;
  }

  private static Band band(Constant from, Constant to, Constants constants) {
    return Band.of(constants.of(from), constants.of(to));
  }
}
