package peakproof.fact;

import java.time.Duration;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/** Hard and long runs near other training. */
final class KeyRuns {
  private static final Duration DAY = Duration.ofHours(24);

  private KeyRuns() {}

  /** The hard or long run of the day before; null without one, and when that day is meant so. */
  static @Nullable Run onEve(Run run, Timeline timeline) {
    Day eve = timeline.at(run.date().minusDays(1));
    if (eve == null || eve.backToBack()) {
      return null;
    }
    return eve.sessions().stream()
        .filter(Run.class::isInstance)
        .map(Run.class::cast)
        .filter(Run::keyRun)
        .findFirst()
        .orElse(null);
  }

  /**
   * The first hard or long run later on the day or on the next one; by the clock where both say
   * when they start.
   */
  static @Nullable Run within(Session session, Timeline timeline) {
    boolean after = false;
    for (Day day : timeline.between(session.date(), session.date().plusDays(1))) {
      for (Session next : day.sessions()) {
        boolean later = after;
        after |= next == session;
        if (next instanceof Run run && run.keyRun() && follows(session, run, later)) {
          return run;
        }
      }
    }
    return null;
  }

  private static boolean follows(Session session, Run run, boolean listedLater) {
    LocalTime from = session.written.time();
    LocalTime start = run.written.time();
    if (from == null || start == null) {
      return listedLater;
    }
    Double minutes = session.minutes();
    Duration between =
        Duration.between(session.date().atTime(from), run.date().atTime(start))
            .minusSeconds(minutes == null ? 0 : Math.round(minutes * 60));
    return !between.isNegative() && between.compareTo(DAY) < 0;
  }
}
