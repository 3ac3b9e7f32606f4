package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.measure.Constant;
import peakproof.measure.Coverage;
import peakproof.measure.Median;

/**
 * The last seven nights, up to the morning of the as-of date or of the day before.
 *
 * @param nights how many of them the log has
 * @param shortNights how many of those were short
 * @param meanMinutes mean sleep a night; unknown while too few nights are logged
 * @param loadAboveUsual whether the load of these days is above the median of the four weeks
 *     before; unknown when a day or rating of these days or of too many before is
 * @param entries their days, newest first
 */
@OfHealth
public record Sleep(
    double nights,
    double shortNights,
    @Nullable Double meanMinutes,
    @Nullable Boolean loadAboveUsual,
    List<Where> entries)
    implements Fact {
  private static final int DAYS = 7;
  private static final int WEEKS_BEFORE = 4;

  /** Null without a recent night. */
  static @Nullable Sleep of(@Nullable Log log, Timeline timeline) {
    LocalDate last = newest(log, timeline.asOf());
    if (log == null || last == null) {
      return null;
    }
    List<Where> entries = new ArrayList<>();
    double minutes = 0;
    double shorts = 0;
    for (LocalDate day = last; day.isAfter(last.minusDays(DAYS)); day = day.minusDays(1)) {
      Double night = night(log, day);
      if (night != null) {
        minutes += night;
        shorts += night < timeline.constant(Constant.SHORT_NIGHT) - 1e-9 ? 1 : 0;
        entries.add(new Where(Objects.requireNonNull(log.days().get(day)).at(), day, null));
      }
    }
    int nights = entries.size();
    boolean enough = new Coverage(nights, DAYS).enough(timeline.constants());
    return new Sleep(
        nights,
        shorts,
        enough ? Exact.of(minutes / nights) : null,
        loadAboveUsual(timeline, last.minusDays(1)),
        List.copyOf(entries));
  }

  private static @Nullable LocalDate newest(@Nullable Log log, LocalDate asOf) {
    if (log == null) {
      return null;
    }
    LocalDate eve = asOf.minusDays(1);
    return night(log, asOf) != null ? asOf : night(log, eve) != null ? eve : null;
  }

  private static @Nullable Double night(Log log, LocalDate date) {
    Log.Day day = log.days().get(date);
    Double seconds = day == null || day.morning() == null ? null : day.morning().sleepSeconds();
    return seconds == null ? null : (Double) (seconds / 60);
  }

  private static @Nullable Boolean loadAboveUsual(Timeline timeline, LocalDate last) {
    Double now = load(timeline, last);
    List<Double> before = new ArrayList<>();
    for (int week = 1; week <= WEEKS_BEFORE; week++) {
      Double load = load(timeline, last.minusWeeks(week));
      if (load != null) {
        before.add(load);
      }
    }
    Double usual = Median.of(before);
    boolean enough = new Coverage(before.size(), WEEKS_BEFORE).enough(timeline.constants());
    return now == null || usual == null || !enough ? null : (Boolean) (now > usual + 1e-9);
  }

  private static @Nullable Double load(Timeline timeline, LocalDate last) {
    double sum = 0;
    for (Day day : timeline.between(last.minusDays(DAYS - 1), last)) {
      Double load = timeline.loads().of(day);
      if (load == null) {
        return null;
      }
      sum += load;
    }
    return sum;
  }

  @Override
  public List<Where> where() {
    return entries;
  }
}
