package peakproof.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.Session;
import peakproof.document.Sport;

/**
 * The race swim from critical swim speed, which over-reads it by 2 to 6 s/100 m, else from the
 * newest logged set at goal pace; and what is swum besides the straight line. Common practice, no
 * source.
 */
final class SwimLeg {
  private SwimLeg() {}

  /** Paces in s/100 m. */
  private record Held(double fast, double likely, double slow, List<String> entries) {}

  static Projected projected(
      @Nullable Double metres,
      @Nullable Log log,
      LocalDate asOf,
      Calibration athlete,
      Constants constants) {
    if (metres == null) {
      return Projected.unknown("the event's swim leg");
    }
    Held held = held(log, asOf, athlete, constants);
    if (held == null) {
      return Projected.unknown(
          athlete.criticalSwimSpeed().because() + ", or a logged goal-pace set with `held`");
    }
    double hundreds = metres / 100;
    return Projected.known(
        new Projected.Range(
            hundreds * held.fast * constants.of(Constant.NAVIGATION_FAST),
            hundreds * held.likely * constants.of(Constant.NAVIGATION_LIKELY),
            hundreds * held.slow * constants.of(Constant.NAVIGATION_SLOW)),
        held.entries);
  }

  private static @Nullable Held held(
      @Nullable Log log, LocalDate asOf, Calibration athlete, Constants constants) {
    Double speed = athlete.criticalSwimSpeed().value();
    if (speed != null) {
      double pace = 100 / speed;
      return new Held(
          pace + constants.of(Constant.OPEN_SWIM_FAST),
          pace + constants.of(Constant.OPEN_SWIM_LIKELY),
          pace + constants.of(Constant.OPEN_SWIM_SLOW),
          athlete.criticalSwimSpeed().entries());
    }
    return log == null ? null : newestSet(log, asOf, athlete, constants);
  }

  private static @Nullable Held newestSet(
      Log log, LocalDate asOf, Calibration athlete, Constants constants) {
    LocalDate first = asOf.minusWeeks((long) constants.of(Constant.RACE_WEEKS));
    List<Log.Day> days = new ArrayList<>(log.days().subMap(first, asOf.plusDays(1)).values());
    Collections.reverse(days);
    for (Log.Day day : days) {
      for (Session session : day.sessions()) {
        Double held = session.recorded().held();
        if (held != null && goalPaceSet(session, held, athlete, constants)) {
          return new Held(100 * held, 100 * held, 100 * held, List.of(session.at() + "/held"));
        }
      }
    }
    return null;
  }

  /** A swim with at least 10 min at race effort. */
  private static boolean goalPaceSet(
      Session session, double held, Calibration athlete, Constants constants) {
    if (session.sport() != Sport.SWIM || session.set() == null) {
      return false;
    }
    Double metres = SetBreakdown.of(session.set(), Sport.SWIM, athlete, constants).raceMetres();
    double least = constants.of(Constant.RACE_EFFORT_LEAST) * SetPieces.SECONDS_A_MINUTE;
    return metres != null && !Limit.below(metres * held, least);
  }
}
