package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.measure.Constant;

/** What was run before a run. */
final class RunHistory {
  private final Timeline timeline;

  RunHistory(Timeline timeline) {
    this.timeline = timeline;
  }

  /**
   * The longest run before another.
   *
   * @param km null when the days before are not known well enough
   * @param stated true when it rests on what the coach states in place of a log
   */
  record Longest(@Nullable Double km, boolean stated) {}

  Longest longestBefore(Run run) {
    long window = (long) timeline.constant(Constant.SPIKE_DAYS);
    LocalDate from = run.date().minusDays(window);
    List<Day> days = timeline.between(from, run.date().minusDays(1));
    long known = days.stream().filter(Day::isKnown).count();
    Double longest = null;
    for (Day day : days) {
      for (Session session : day.sessions()) {
        if (session instanceof Run earlier) {
          Double km = earlier.km();
          if (km == null) {
            return new Longest(null, false);
          }
          longest = longest == null ? km : (Double) Math.max(longest, km);
        }
      }
    }
    if (known >= window * timeline.constant(Constant.COVERAGE_LEAST)) {
      return new Longest(longest, false);
    }
    Double stated = statedKm();
    return new Longest(
        stated == null ? null : longest == null ? stated : (Double) Math.max(stated, longest),
        true);
  }

  /** The stated longest run in km, at the athlete's easy pace. */
  private @Nullable Double statedKm() {
    Athlete.Lately lately = timeline.hasLately() ? timeline.lately() : null;
    Double seconds = lately == null ? null : lately.longestRunSeconds();
    Double open = timeline.calibration().openMarathonPace().value();
    if (seconds == null || open == null) {
      return null;
    }
    return seconds / (open * timeline.constant(Constant.RUN_EASY));
  }

  /** Days without a run before a run; null when a day between is not known. */
  @Nullable Double daysWithout(Run run) {
    double days = 0;
    for (LocalDate date = run.date().minusDays(1); ; date = date.minusDays(1)) {
      Day day = timeline.at(date);
      if (day == null || !day.isKnown()) {
        return null;
      }
      if (day.sessions().stream().anyMatch(Run.class::isInstance)) {
        return days;
      }
      days++;
    }
  }
}
