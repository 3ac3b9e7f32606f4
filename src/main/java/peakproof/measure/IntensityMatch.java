package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The share of done sessions that were as hard as planned: in the planned domain, or within one
 * point of the planned rating (common practice, no source). Stands beside the three numbers of
 * adherence and is blended with none.
 *
 * @param share 0 to 1; unknown when no session can be compared
 * @param compared sessions that could be
 * @param sessions all of them
 */
public record IntensityMatch(Amount share, int compared, int sessions) {

  /** A planned session and what it became; null for what is unknown of either. */
  public record Pair(
      @Nullable Domain planned,
      @Nullable Domain done,
      @Nullable Double plannedRating,
      @Nullable Double doneRating) {}

  /** Of matched sessions; those that cannot be compared are left out and counted. */
  public static IntensityMatch of(List<Pair> pairs, Constants constants) {
    int compared = 0;
    int matched = 0;
    for (Pair pair : pairs) {
      Boolean match = matches(pair, constants);
      compared += match == null ? 0 : 1;
      matched += Boolean.TRUE.equals(match) ? 1 : 0;
    }
    Amount share =
        compared == 0
            ? Amount.unknown("the intensity of done sessions")
            : Amount.of((double) matched / compared);
    return new IntensityMatch(share, compared, pairs.size());
  }

  private static @Nullable Boolean matches(Pair pair, Constants constants) {
    Double planned = pair.plannedRating;
    Double done = pair.doneRating;
    boolean domains = pair.planned != null && pair.done != null;
    if (domains && pair.planned == pair.done) {
      return true;
    }
    if (planned == null || done == null) {
      return domains ? Boolean.FALSE : null;
    }
    double near = constants.of(Constant.MATCHING_RATING);
    return Limit.within(done - planned, -near, near);
  }
}
