package peakproof.measure;

/**
 * What is left between a projected time and a limit; the limit comes from the event. A share under
 * 10 % is thin (common practice, no source).
 *
 * @param seconds left, negative when the limit comes first
 * @param share of the limit
 */
public record CutOffMargin(double seconds, double share) {

  /** Of a limit above zero and a projected time, both in seconds from the start. */
  public static CutOffMargin of(double limit, double projected) {
    return new CutOffMargin(limit - projected, (limit - projected) / limit);
  }

  /** True when less than 10 % of the limit is left. */
  public boolean thin(Constants constants) {
    return Limit.below(share, constants.of(Constant.CUT_OFF_MARGIN));
  }
}
