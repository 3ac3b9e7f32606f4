package peakproof.measure;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Sport;
import peakproof.measure.Reading.Origin;

/** What the newest race or test over a distance says of running. */
final class RunTests {
  private RunTests() {}

  /** The newest of the last 16 weeks, the longest of a day; null when there is none. */
  static Athlete.@Nullable Test newest(
      List<Athlete.Test> tests, LocalDate asOf, Constants constants) {
    LocalDate oldest = asOf.minusWeeks((long) constants.of(Constant.RACE_WEEKS));
    double shortest = constants.of(Constant.RIEGEL_SHORTEST);
    return tests.stream()
        .filter(test -> test.sport() == Sport.RUN && metres(test) > 0 && seconds(test) >= shortest)
        .filter(test -> !test.date().isAfter(asOf) && !test.date().isBefore(oldest))
        .max(Comparator.comparing(Athlete.Test::date).thenComparing(RunTests::metres))
        .orElse(null);
  }

  /** Seconds a test predicts for a distance run fresh. */
  static Amount open(Athlete.Test test, double metres, double exponent) {
    return EnduranceTime.scaled(metres(test), seconds(test), metres, exponent);
  }

  /** Pace of a marathon run fresh, s/km. */
  static Reading openMarathonPace(
      Athlete.@Nullable Test test, Reading goalPace, Constants constants) {
    if (test != null) {
      Amount open = open(test, Pace.MARATHON, constants.of(Constant.RIEGEL_EXPONENT));
      Double seconds = open.value();
      Amount pace = seconds == null ? open : Pace.perKm(Pace.MARATHON, seconds);
      return Reading.of(pace, Origin.TESTED, List.of(test.at()));
    }
    Double goal = goalPace.value();
    return goal == null
        ? Reading.unknown("a run race or test of the last weeks, or " + goalPace.because())
        : Reading.of(goal / constants.of(Constant.RUN_UNTESTED), Origin.GOAL, goalPace.entries());
  }

  private static double metres(Athlete.Test test) {
    Double metres = test.metres();
    return metres == null ? 0 : metres;
  }

  private static double seconds(Athlete.Test test) {
    Double seconds = test.seconds();
    return seconds == null ? 0 : seconds;
  }
}
