package peakproof.measure;

/**
 * Loss of maximal oxygen uptake after stopping completely, as a range and no promise: highly
 * trained people, Coyle 1984, J Appl Physiol 57:1857 (by secondary text; the recently trained lose
 * less, Mujika and Padilla 2000). Reduced training is another matter.
 *
 * @param least share lost by the kinder of table and smooth form, 0.07 for 7 %
 * @param most share lost by the other
 */
public record Detraining(double least, double most) {
  private static final double[] TABLE_DAYS = {12, 21, 56, 84};
  private static final Constant[] TABLE = {
    Constant.DETRAINING_DAY_12,
    Constant.DETRAINING_DAY_21,
    Constant.DETRAINING_DAY_56,
    Constant.DETRAINING_DAY_84
  };

  /**
   * After a gap.
   *
   * @param days without training, zero or more
   * @param otherSport true when another sport was trained: half the loss of heart and lungs, though
   *     not of tissue tolerance (common practice, no source)
   */
  public static Detraining of(double days, boolean otherSport, Constants constants) {
    double left = otherSport ? constants.of(Constant.DETRAINING_OTHER_SPORT) : 1;
    double smooth = left * smooth(days, constants);
    double table = left * table(days, constants);
    return new Detraining(Math.min(smooth, table), Math.max(smooth, table));
  }

  /** The smooth form: 16 (1 − e^(−days/20.86)) %, as a share. */
  public static double smooth(double days, Constants constants) {
    return days > 0
        ? constants.of(Constant.DETRAINING_MOST)
            * -Math.expm1(-days / constants.of(Constant.DETRAINING_DAYS))
        : 0;
  }

  /** The table, straight lines between its days, level after the last; as a share. */
  public static double table(double days, Constants constants) {
    double fromDay = constants.of(Constant.DETRAINING_NONE);
    double fromLoss = 0;
    if (!(days > fromDay)) {
      return 0;
    }
    for (int i = 0; i < TABLE.length; i++) {
      double toLoss = constants.of(TABLE[i]);
      if (days <= TABLE_DAYS[i]) {
        return fromLoss + (toLoss - fromLoss) * (days - fromDay) / (TABLE_DAYS[i] - fromDay);
      }
      fromDay = TABLE_DAYS[i];
      fromLoss = toLoss;
    }
    return fromLoss;
  }
}
