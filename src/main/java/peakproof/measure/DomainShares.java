package peakproof.measure;

import org.jspecify.annotations.Nullable;

/**
 * Shares of the classified time in the three intensity domains. Ten full-distance age-groupers over
 * six months: 69, 25 and 6 % (Neal 2011).
 *
 * @param moderate share, or null when unknown
 * @param heavy share, or null when unknown
 * @param severe share, or null when unknown
 * @param unclassified share of all the time, or null when unknown
 * @param name null when unknown, when more than 25 % is unclassified, or when none fits
 */
public record DomainShares(
    @Nullable Double moderate,
    @Nullable Double heavy,
    @Nullable Double severe,
    @Nullable Double unclassified,
    @Nullable Name name) {

  /** The trade's words for a distribution. */
  public enum Name {
    /** More than 35 % heavy. */
    THRESHOLD_HEAVY,
    /** Moderate, then severe, then heavy. */
    POLARISED,
    /** Moderate, then heavy, then severe. */
    PYRAMIDAL
  }

  private static final DomainShares UNKNOWN = new DomainShares(null, null, null, null, null);

  /** The shares of some minutes; all null when minutes are unknown or there are none. */
  public static DomainShares of(DomainMinutes minutes, Constants constants) {
    Double moderate = minutes.moderate();
    Double heavy = minutes.heavy();
    Double severe = minutes.severe();
    Double unclassified = minutes.unclassified();
    if (moderate == null || heavy == null || severe == null || unclassified == null) {
      return UNKNOWN;
    }
    double classified = moderate + heavy + severe;
    boolean sound =
        Limit.countable(moderate)
            && Limit.countable(heavy)
            && Limit.countable(severe)
            && Limit.countable(unclassified);
    if (!sound || !Limit.positive(classified) || !Limit.positive(classified + unclassified)) {
      return UNKNOWN;
    }
    double outside = unclassified / (classified + unclassified);
    double first = moderate / classified;
    double second = heavy / classified;
    double third = severe / classified;
    boolean named = !Limit.above(outside, constants.of(Constant.UNCLASSIFIED_MOST));
    return new DomainShares(
        first, second, third, outside, named ? name(first, second, third, constants) : null);
  }

  /**
   * The polarisation index, Treff 2019 (from memory): above 2.0 a distribution is called polarised.
   * Null when severe outweighs moderate, when it is not defined, and of nothing severe.
   *
   * @param moderate share
   * @param heavy share; none at all counts as 1 %
   * @param severe share
   */
  public static @Nullable Double polarisation(
      double moderate, double heavy, double severe, Constants constants) {
    if (severe > moderate) {
      return null;
    }
    double second = heavy > 0 ? heavy : constants.of(Constant.HEAVY_SHARE_FLOOR);
    double index = Math.log10(moderate / second * severe * 100);
    return Double.isFinite(index) ? (Double) index : null;
  }

  private static @Nullable Name name(
      double moderate, double heavy, double severe, Constants constants) {
    if (Limit.above(heavy, constants.of(Constant.THRESHOLD_HEAVY))) {
      return Name.THRESHOLD_HEAVY;
    }
    if (moderate > severe && severe > heavy) {
      return Name.POLARISED;
    }
    return moderate > heavy && heavy > severe ? Name.PYRAMIDAL : null;
  }
}
