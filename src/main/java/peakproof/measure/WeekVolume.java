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
}
