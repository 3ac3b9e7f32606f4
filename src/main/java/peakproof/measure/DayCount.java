package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Days counted where some are unknown, so that the count is a span.
 *
 * @param least the count when no unknown day counts
 * @param most the count when all of them do
 */
public record DayCount(int least, int most) {

  /** Days of heat exposure among the last 14, oldest first; null for unknown days. */
  public static DayCount heat(List<@Nullable Boolean> days, Constants constants) {
    int window = (int) constants.of(Constant.HEAT_DAYS);
    int least = 0;
    int unknown = 0;
    for (Boolean day : days.subList(Math.max(0, days.size() - window), days.size())) {
      least += Boolean.TRUE.equals(day) ? 1 : 0;
      unknown += day == null ? 1 : 0;
    }
    int missing = Math.max(0, window - days.size());
    return new DayCount(least, least + unknown + missing);
  }

  /**
   * Days since the last full rest day, zero when the last day was one; oldest first, null for
   * unknown days. Without a rest day it may lie anywhere before, and the span ends at the list.
   */
  public static DayCount sinceRest(List<@Nullable Boolean> rest) {
    int least = rest.size();
    for (int since = 0; since < rest.size(); since++) {
      Boolean day = rest.get(rest.size() - 1 - since);
      if (day == null) {
        least = Math.min(least, since);
      } else if (day) {
        return new DayCount(Math.min(least, since), since);
      }
    }
    return new DayCount(least, rest.size());
  }
}
