package peakproof.measure;

import org.jspecify.annotations.Nullable;

/**
 * What is left between a projected time and a limit; the limit comes from the event. A share under
 * 10 % is thin (common practice, no source).
 *
 * @param seconds left, negative when the limit comes first; unknown without a limit above zero and
 *     a time from zero
 * @param share of the limit; unknown likewise
 */
public record CutOffMargin(Amount seconds, Amount share) {

  /** Of a limit above zero and a projected time, both in seconds from the start. */
  public static CutOffMargin of(double limit, double projected) {
    if (!Limit.positive(limit) || !Limit.countable(projected)) {
      Amount unknown = Amount.unknown("a limit and a projected time");
      return new CutOffMargin(unknown, unknown);
    }
    double left = limit - projected;
    return new CutOffMargin(Amount.of(left), Amount.of(left / limit));
  }

  /** True when less than 10 % of the limit is left; null when that is unknown. */
  public @Nullable Boolean thin(Constants constants) {
    Double left = share.value();
    return left == null ? null : (Boolean) Limit.below(left, constants.of(Constant.CUT_OFF_MARGIN));
  }
}
