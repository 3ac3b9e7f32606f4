package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete.Test;
import peakproof.document.Log;
import peakproof.document.Plan;
import peakproof.measure.Constant;

/**
 * How the athlete comes to the taper, within a few days of its start.
 *
 * @param date its first day
 * @param lowMornings mornings in a row, up to the newest, with low mood or after a short night;
 *     unknown without an entry of the as-of date or the day before
 * @param wornOut true when these are more than a bad week; unknown like them
 * @param fallShare by how much the newest tests of the last four weeks are worse than the best
 *     before of the same kind, the least of them; below 0 when one is better; unknown without two
 *     tests of a kind
 */
@OfHealth
public record TaperStart(
    LocalDate date,
    @Nullable Double lowMornings,
    @Nullable Boolean wornOut,
    @Nullable Double fallShare,
    Where entry)
    implements Fact {
  private static final int RECENT_DAYS = 28;
  private static final int BEFORE_WEEKS = 12;

  /** Null away from the start of the taper, and when that is not known. */
  static @Nullable TaperStart of(Plan plan, @Nullable Log log, Timeline timeline) {
    LocalDate starts = starts(timeline);
    LocalDate asOf = timeline.asOf();
    if (starts == null
        || Math.abs(ChronoUnit.DAYS.between(asOf, starts))
            > timeline.constant(Constant.TAPER_NEAR)) {
      return null;
    }
    Double low = lowMornings(log, timeline);
    return new TaperStart(
        starts,
        low,
        low == null ? null : (Boolean) (low >= timeline.constant(Constant.LOW_MORNINGS) - 1e-9),
        fallShare(plan.athlete().tests(), asOf),
        new Where(plan.at() + "/weeks", null, Week.monday(starts)));
  }

  /** The Monday of the first taper week; null when the week before may belong to it. */
  static @Nullable LocalDate starts(Timeline timeline) {
    List<Week> weeks = timeline.weeks().all();
    for (int i = 0; i < weeks.size(); i++) {
      if (weeks.get(i).phase() == Phase.TAPER) {
        return i > 0 && weeks.get(i - 1).phase() == null ? null : weeks.get(i).starts();
      }
    }
    return null;
  }

  private static @Nullable Double lowMornings(@Nullable Log log, Timeline timeline) {
    LocalDate day = timeline.asOf();
    Boolean newest = low(log, day, timeline);
    if (newest == null) {
      day = day.minusDays(1);
      newest = low(log, day, timeline);
    }
    double count = 0;
    while (Boolean.TRUE.equals(low(log, day, timeline))) {
      count++;
      day = day.minusDays(1);
    }
    return newest == null ? null : (Double) count;
  }

  private static @Nullable Boolean low(@Nullable Log log, LocalDate date, Timeline timeline) {
    Log.Day day = log == null ? null : log.days().get(date);
    if (day == null || day.morning() == null) {
      return null;
    }
    Double mood = day.morning().mood();
    Double sleep = day.morning().sleepSeconds();
    boolean lowMood = mood != null && mood <= timeline.constant(Constant.LOW_MOOD) + 1e-9;
    boolean shortNight =
        sleep != null && sleep / 60 < timeline.constant(Constant.SHORT_NIGHT) - 1e-9;
    return mood == null && sleep == null ? null : (Boolean) (lowMood || shortNight);
  }

  private static @Nullable Double fallShare(List<Test> tests, LocalDate asOf) {
    return tests.stream()
        .filter(test -> !test.date().isAfter(asOf))
        .filter(test -> !test.date().isBefore(asOf.minusDays(RECENT_DAYS)))
        .map(test -> fall(test, tests))
        .filter(Objects::nonNull)
        .min(Double::compare)
        .orElse(null);
  }

  /** Against the best test of the same kind in the weeks before; null without one. */
  private static @Nullable Double fall(Test newer, List<Test> tests) {
    Stream<Test> before =
        tests.stream()
            .filter(test -> test.date().isBefore(newer.date()))
            .filter(test -> !test.date().isBefore(newer.date().minusWeeks(BEFORE_WEEKS)))
            .filter(test -> test.sport() == newer.sport());
    Double time = newer.seconds();
    if (newer.metres() != null && time != null) {
      Double best =
          least(
              before.filter(test -> newer.metres().equals(test.metres()) && test.seconds() != null),
              test -> Objects.requireNonNull(test.seconds()));
      return best == null ? null : (Double) Exact.of(time / best - 1);
    }
    Double power = newer.power();
    if (newer.workSeconds() == null || power == null) {
      return null;
    }
    Double best =
        least(
            before.filter(
                test -> newer.workSeconds().equals(test.workSeconds()) && test.power() != null),
            test -> -Objects.requireNonNull(test.power()));
    return best == null ? null : (Double) Exact.of(1 - power / -best);
  }

  private static @Nullable Double least(Stream<Test> tests, ToDoubleFunction<Test> value) {
    return tests.map(value::applyAsDouble).min(Double::compare).orElse(null);
  }

  /** True when tests that can be compared are not asked for, or are there. */
  boolean fallKnown() {
    return !Boolean.TRUE.equals(wornOut) || fallShare != null;
  }

  @Override
  public List<Where> where() {
    return List.of(entry);
  }
}
