package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A week against the best of the three before it that were not lighter, so that the week after a
 * lighter one is no jump. No universal limit is supported (Fredette 2022); the form is common
 * practice, no source.
 *
 * @param change share of the best, 0.30 for 30 % more; null when unknown or undefined
 * @param best amount of the best of the three, or null
 * @param because why there is no change; empty when there is one
 */
public record WeekChange(@Nullable Double change, @Nullable Double best, String because) {

  /**
   * Compares a week.
   *
   * @param amount of the week, null when unknown
   * @param before the weeks before it, oldest first
   * @param floor the change is undefined when the best is below it
   */
  public static WeekChange of(
      @Nullable Double amount, List<WeekVolume> before, double floor, Constants constants) {
    double wanted = constants.of(Constant.WEEK_CHANGE_WEEKS);
    List<@Nullable Double> working = WeekVolume.lastWorking(before, wanted);
    if (amount == null || !Limit.countable(amount)) {
      return without(null, "the week itself is not known whole");
    }
    if (working.size() < wanted) {
      return without(null, "too few weeks before it that were not lighter");
    }
    double best = 0;
    for (Double week : working) {
      if (week == null || !Limit.countable(week)) {
        return without(null, "one of the weeks before it is not known whole");
      }
      best = Math.max(best, week);
    }
    double change = amount / best - 1;
    return Limit.below(best, floor) || !Double.isFinite(change)
        ? without(best, "the weeks before it are too small for a share to mean anything")
        : new WeekChange(change, best, "");
  }

  /**
   * Compares a week with the one just before it, lighter or not: after a lighter week this shows a
   * jump where there is none.
   *
   * @param floor the change is undefined when the week before is below it
   */
  public static WeekChange fromLast(@Nullable Double amount, @Nullable Double last, double floor) {
    if (amount == null || last == null || !Limit.countable(amount) || !Limit.countable(last)) {
      return without(null, "one of the two weeks is not known whole");
    }
    double change = amount / last - 1;
    return Limit.below(last, floor) || !Double.isFinite(change)
        ? without(last, "the week before it is too small for a share to mean anything")
        : new WeekChange(change, last, "");
  }

  private static WeekChange without(@Nullable Double best, String because) {
    return new WeekChange(null, best, because);
  }
}
