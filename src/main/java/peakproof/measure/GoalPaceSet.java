package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A set swum at goal pace as a test: passed when the mean of its repetitions is at the goal pace or
 * under and its last quarter within 2 % of its first (common practice, no source).
 *
 * @param mean seconds a repetition
 * @param fade share by which the last quarter was slower than the first; negative when faster
 * @param passed null when unknown
 */
public record GoalPaceSet(Amount mean, Amount fade, @Nullable Boolean passed) {

  /** Four quarters need four repetitions. */
  private static final int QUARTERS = 4;

  /**
   * Of equal repetitions.
   *
   * @param seconds of each, in order
   * @param goal seconds a repetition takes at goal pace
   */
  public static GoalPaceSet of(List<Double> seconds, double goal, Constants constants) {
    int quarter = seconds.size() / QUARTERS;
    boolean sound = quarter > 0 && seconds.stream().allMatch(Limit::positive);
    if (!sound || !Limit.positive(goal)) {
      Amount unknown = Amount.unknown("the times of four repetitions or more");
      return new GoalPaceSet(unknown, unknown, null);
    }
    Amount mean = Amount.of(mean(seconds));
    double first = mean(seconds.subList(0, quarter));
    double last = mean(seconds.subList(seconds.size() - quarter, seconds.size()));
    Amount fade = Amount.of(last / first - 1);
    Double held = mean.value();
    Double faded = fade.value();
    return new GoalPaceSet(
        mean,
        fade,
        held == null || faded == null
            ? null
            : (Boolean)
                (!Limit.above(held, goal)
                    && !Limit.above(Math.abs(faded), constants.of(Constant.GOAL_SET_FADE))));
  }

  private static double mean(List<Double> seconds) {
    return seconds.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }
}
