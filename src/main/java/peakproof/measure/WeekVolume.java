package peakproof.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a week held, in one unit throughout: minutes, metres or load.
 *
 * @param amount null when a day of it is unknown
 * @param lighter true for a week meant to be lighter, which no other is held against
 */
public record WeekVolume(@Nullable Double amount, boolean lighter) {

  /** The last weeks that are not lighter, newest first, at most so many. */
  static List<@Nullable Double> lastWorking(List<WeekVolume> oldestFirst, double most) {
    List<WeekVolume> newestFirst = new ArrayList<>(oldestFirst);
    Collections.reverse(newestFirst);
    List<@Nullable Double> working = new ArrayList<>();
    for (WeekVolume week : newestFirst) {
      if (!week.lighter && working.size() < most) {
        working.add(week.amount);
      }
    }
    return working;
  }

  /**
   * What a taper is held against: the mean of the last four weeks that are not lighter, of which
   * three must be known; else null.
   */
  static @Nullable Double reference(List<WeekVolume> oldestFirst, Constants constants) {
    double wanted = constants.of(Constant.TAPER_REFERENCE_WEEKS);
    return mean(lastWorking(oldestFirst, wanted), wanted, constants);
  }

  /**
   * What a big week is held against: the median of the last four weeks that are not lighter, of
   * which three must be known; else null.
   */
  public static @Nullable Double usual(List<WeekVolume> oldestFirst, Constants constants) {
    double wanted = constants.of(Constant.USUAL_WEEKS);
    List<Double> known = new ArrayList<>();
    for (Double amount : lastWorking(oldestFirst, wanted)) {
      if (amount != null && Limit.countable(amount)) {
        known.add(amount);
      }
    }
    boolean enough = !Limit.below(known.size() / wanted, constants.of(Constant.COVERAGE_LEAST));
    return enough ? Median.of(known) : null;
  }

  /** The mean of what is known, finite; null when that is under 70 % of what is wanted. */
  static @Nullable Double mean(List<@Nullable Double> amounts, double wanted, Constants constants) {
    double sum = 0;
    int known = 0;
    for (Double amount : amounts) {
      if (amount != null && Limit.countable(amount)) {
        sum += amount;
        known++;
      }
    }
    boolean enough =
        known > 0 && !Limit.below(known / wanted, constants.of(Constant.COVERAGE_LEAST));
    return enough && Double.isFinite(sum) ? (Double) (sum / known) : null;
  }
}
