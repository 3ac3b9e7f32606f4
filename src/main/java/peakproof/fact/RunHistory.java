package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.measure.Constant;
import peakproof.measure.Coverage;
import peakproof.measure.RunSpike;

/** What was run before a run. */
final class RunHistory {
  private final Timeline timeline;
  private final Memo<Run, Comparison> compared = new Memo<>(this::comparison);

  RunHistory(Timeline timeline) {
    this.timeline = timeline;
  }

  /**
   * A run against the ones before it.
   *
   * @param spike null when the days before are not known well enough
   * @param stated true when it rests on what the coach states in place of a log
   */
  record Comparison(@Nullable RunSpike spike, boolean stated) {}

  Comparison compare(Run run) {
    return Objects.requireNonNull(compared.of(run));
  }

  private Comparison comparison(Run run) {
    Double metres = run.metres();
    if (metres == null) {
      return new Comparison(null, false);
    }
    long window = (long) timeline.constant(Constant.SPIKE_DAYS);
    List<Day> days = timeline.between(run.date().minusDays(window), run.date().minusDays(1));
    List<RunSpike.Run> before = new ArrayList<>();
    days.forEach(day -> day.sessions().forEach(session -> add(session, before)));
    int known = (int) days.stream().filter(Day::isKnown).count();
    if (new Coverage(known, (int) window).enough(timeline.constants())) {
      return new Comparison(RunSpike.of(run.date(), metres, before, timeline.constants()), false);
    }
    Double stated = statedMetres();
    if (stated == null) {
      return new Comparison(null, false);
    }
    before.add(new RunSpike.Run(run.date().minusDays(1), stated));
    return new Comparison(RunSpike.of(run.date(), metres, before, timeline.constants()), true);
  }

  private static void add(Session session, List<RunSpike.Run> before) {
    if (session instanceof Run earlier) {
      before.add(new RunSpike.Run(earlier.date(), earlier.metres()));
    }
  }

  /** The stated longest run, at the athlete's easy pace. */
  private @Nullable Double statedMetres() {
    Athlete.Lately lately = timeline.hasLately() ? timeline.lately() : null;
    Double seconds = lately == null ? null : lately.longestRunSeconds();
    Double open = timeline.calibration().openMarathonPace().value();
    if (seconds == null || open == null) {
      return null;
    }
    return 1000 * seconds / (open * timeline.constant(Constant.RUN_EASY));
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
