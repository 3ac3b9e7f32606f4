package peakproof.measure;

import org.jspecify.annotations.Nullable;

/**
 * The goal of the run leg against the same distance run fresh. Bands are common practice, no source
 * (no good cohort was found); the full distance usually takes 1.03 to 1.30.
 *
 * @param usual against the open time, projected by the usual exponent where there is none
 * @param cautious against that of the cautious exponent
 * @param projected true when the open time was projected from another distance
 */
public record RunLegRatio(Amount usual, Amount cautious, boolean projected) {

  /** What to make of it; the kinder of the two ratios decides. */
  public enum Verdict {
    /** Faster than the same distance fresh. */
    IMPLAUSIBLE,
    /** Less than 5 % slower: worth a question. */
    QUESTIONABLE,
    PLAUSIBLE,
    /** More than 35 % slower: set too low, or a plan to walk. */
    GENEROUS
  }

  /** Of a goal and a time over the same distance, seconds. */
  public static RunLegRatio of(double goal, double open) {
    Amount ratio = ratio(goal, open);
    return new RunLegRatio(ratio, ratio, false);
  }

  /** Of a goal over a leg and a race over another distance, seconds and metres. */
  public static RunLegRatio projected(
      double goal, double leg, double metres, double seconds, Constants constants) {
    return new RunLegRatio(
        ratio(goal, open(leg, metres, seconds, Constant.RIEGEL_EXPONENT, constants)),
        ratio(goal, open(leg, metres, seconds, Constant.RIEGEL_CAUTIOUS, constants)),
        true);
  }

  /** Null when a ratio is unknown. */
  public @Nullable Verdict verdict(Constants constants) {
    Double one = usual.value();
    Double other = cautious.value();
    if (one == null || other == null) {
      return null;
    }
    double most = Math.max(one, other);
    if (Limit.below(most, constants.of(Constant.RUN_LEG_IMPLAUSIBLE))) {
      return Verdict.IMPLAUSIBLE;
    }
    if (Limit.below(most, constants.of(Constant.RUN_LEG_QUESTION))) {
      return Verdict.QUESTIONABLE;
    }
    boolean generous = Limit.above(Math.min(one, other), constants.of(Constant.RUN_LEG_GENEROUS));
    return generous ? Verdict.GENEROUS : Verdict.PLAUSIBLE;
  }

  private static Amount open(
      double leg, double metres, double seconds, Constant exponent, Constants constants) {
    return EnduranceTime.scaled(metres, seconds, leg, constants.of(exponent));
  }

  private static Amount ratio(double goal, Amount open) {
    Double seconds = open.value();
    return seconds == null ? open : ratio(goal, seconds);
  }

  private static Amount ratio(double goal, double open) {
    return Limit.positive(goal) && Limit.positive(open)
        ? Amount.of(goal / open)
        : Amount.unknown("a goal and an open time above zero");
  }
}
