package peakproof.measure;

/**
 * Running straight off the bike: its energy cost lies 1.6 to 11.6 % above running fresh, less the
 * better the athlete (Millet and Vleck 2000, doi 10.1136/bjsm.34.5.384). What a plan should expect
 * within that is common practice, no source.
 */
public final class BrickPace {
  private BrickPace() {}

  /** The share by which to expect to run slower, 0.03 for 3 %. */
  public static double cost(boolean longRide, boolean novice, Constants constants) {
    if (novice) {
      return constants.of(Constant.BRICK_COST_NOVICE);
    }
    return constants.of(longRide ? Constant.BRICK_COST_LONG : Constant.BRICK_COST_SHORT);
  }

  /**
   * Pace off the bike, in the unit of the fresh pace.
   *
   * @param fresh above zero, such as s/km
   * @param cost share by which it is slower, from 0 to 1
   */
  public static Amount of(double fresh, double cost) {
    return Limit.positive(fresh) && Limit.within(cost, 0, 1)
        ? Amount.of(fresh * (1 + cost))
        : Amount.unknown("a fresh pace");
  }
}
