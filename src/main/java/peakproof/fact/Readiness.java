package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;

/**
 * How the athlete woke up last, by the newest morning entry. Without a recent one all is unknown.
 *
 * @param date the newest morning entry, or the as-of date
 * @param daysToRace days from that day to race day
 * @param fatigue rating 0 to 10, 10 worst
 * @param betterOfTwoNightsMinutes the longer of the last two nights' sleep
 * @param restingRise resting heart rate over the athlete's median of the 28 days before, beats;
 *     unknown where a medicine sets the heart rate
 */
@OfHealth
public record Readiness(
    String pointer,
    LocalDate date,
    double daysToRace,
    @Nullable Double fatigue,
    @Nullable Double betterOfTwoNightsMinutes,
    @Nullable Double restingRise)
    implements Fact {
  private static final int MEDIAN_DAYS = 28;
  private static final int MEDIAN_LEAST = 14;

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, date, null));
  }

  static Readiness of(@Nullable Log log, LocalDate asOf, LocalDate race, boolean heartRateUsable) {
    LocalDate date = newest(log, asOf);
    Log.Day day = log == null || date == null ? null : log.days().get(date);
    if (log == null || date == null || day == null || day.morning() == null) {
      return new Readiness(
          "/plan/athlete", asOf, ChronoUnit.DAYS.between(asOf, race), null, null, null);
    }
    Double resting = heartRateUsable ? day.morning().restingHeartRate() : null;
    Double usual = usualResting(log, date);
    return new Readiness(
        day.at(),
        date,
        ChronoUnit.DAYS.between(date, race),
        day.morning().fatigue(),
        betterNight(sleep(log, date), sleep(log, date.minusDays(1))),
        resting == null || usual == null ? null : resting - usual);
  }

  private static @Nullable LocalDate newest(@Nullable Log log, LocalDate asOf) {
    for (LocalDate day = asOf;
        log != null && !day.isBefore(asOf.minusDays(1));
        day = day.minusDays(1)) {
      Log.Day entry = log.days().get(day);
      if (entry != null && entry.morning() != null) {
        return day;
      }
    }
    return null;
  }

  private static @Nullable Double betterNight(@Nullable Double last, @Nullable Double before) {
    return last == null || before == null ? null : (Double) (Math.max(last, before) / 60);
  }

  private static @Nullable Double sleep(Log log, LocalDate date) {
    Log.Day day = log.days().get(date);
    return day == null || day.morning() == null ? null : day.morning().sleepSeconds();
  }

  private static @Nullable Double usualResting(Log log, LocalDate date) {
    List<Double> rates = new ArrayList<>();
    for (Log.Day day : log.days().subMap(date.minusDays(MEDIAN_DAYS), date).values()) {
      Double rate = day.morning() == null ? null : day.morning().restingHeartRate();
      if (rate != null) {
        rates.add(rate);
      }
    }
    if (rates.size() < MEDIAN_LEAST) {
      return null;
    }
    rates.sort(null);
    int middle = rates.size() / 2;
    return rates.size() % 2 == 1
        ? rates.get(middle)
        : (Double) ((rates.get(middle - 1) + rates.get(middle)) / 2);
  }
}
