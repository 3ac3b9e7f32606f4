package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a daily entry, such as hours of sleep or the resting heart rate, says over a window.
 *
 * @param value in the unit of the entry
 * @param coverage known days of the window
 */
public record DailyEntry(Amount value, Coverage coverage) {

  /** Mean hours of sleep over the last 7 days, oldest first, null for unknown ones. */
  public static DailyEntry sleep(List<@Nullable Double> days, Constants constants) {
    List<@Nullable Double> window = Days.last(days, (int) constants.of(Constant.SLEEP_DAYS));
    return judged(window, (int) constants.of(Constant.SLEEP_DAYS), Days.mean(window), constants);
  }

  /**
   * Beats a minute by which the last day's resting heart rate lies above the median of the 28 days
   * before it; illness, heat or a hard block may be behind it, and it decides nothing.
   *
   * @param days oldest first, null for unknown ones; the last is the one held against the others
   */
  public static DailyEntry restingHeartRate(List<@Nullable Double> days, Constants constants) {
    int wanted = (int) constants.of(Constant.RESTING_DAYS);
    List<@Nullable Double> before =
        Days.last(days.subList(0, Math.max(0, days.size() - 1)), wanted);
    Double today = days.isEmpty() ? null : days.get(days.size() - 1);
    Double usual = Median.of(Days.known(before));
    if (today == null || !Limit.positive(today)) {
      Coverage coverage = new Coverage(Coverage.of(before).known(), wanted);
      return new DailyEntry(Amount.unknown("today's resting heart rate"), coverage);
    }
    return judged(before, wanted, usual == null ? null : (Double) (today - usual), constants);
  }

  private static DailyEntry judged(
      List<@Nullable Double> window, int wanted, @Nullable Double value, Constants constants) {
    Coverage coverage = new Coverage(Coverage.of(window).known(), wanted);
    boolean suppressed = coverage.judged(constants) == Coverage.Judgement.SUPPRESSED;
    return new DailyEntry(
        value == null || suppressed || !Days.sound(window)
            ? Amount.unknown(Days.TOO_FEW)
            : Amount.of(value),
        coverage);
  }
}
