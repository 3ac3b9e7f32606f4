package peakproof.measure;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Sport;
import peakproof.measure.Reading.Origin;

/** Critical swim speed from the newest swim tests that fit together. */
record SwimTests(Reading speed, Reading reserve) {

  /**
   * The newest trials on or before the as-of date that lie within 21 days, the newest of each
   * distance (of a day the fastest); when they are refused, the same with the newest trial left
   * out, and so on.
   */
  static SwimTests newest(List<Athlete.Test> tests, LocalDate asOf, Constants constants) {
    List<Athlete.Test> trials =
        tests.stream()
            .filter(test -> trial(test, asOf, constants) != null)
            .sorted(
                Comparator.comparing(Athlete.Test::date)
                    .reversed()
                    .thenComparing(SwimTests::seconds))
            .toList();
    String because = "two swim tests over different distances, such as 200 m and 400 m";
    for (int first = 0; first < trials.size(); first++) {
      List<Athlete.Test> together = together(trials.subList(first, trials.size()), constants);
      CriticalSwimSpeed fit =
          CriticalSwimSpeed.of(
              together.stream().map(test -> trial(test, asOf, constants)).toList(), constants);
      Double speed = fit.speed();
      Double reserve = fit.reserve();
      if (speed != null && reserve != null) {
        List<String> entries = together.stream().map(Athlete.Test::at).toList();
        return new SwimTests(
            Reading.of(speed, Origin.TESTED, entries), Reading.of(reserve, Origin.TESTED, entries));
      }
      if (first == 0 && together.size() > 1) {
        because = "new swim tests over 200 m and 400 m (" + fit.refusal() + ")";
      }
    }
    return new SwimTests(Reading.unknown(because), Reading.unknown(because));
  }

  /** Pace at critical swim speed, s/100 m; without tests from the goal pace. */
  Reading pace(Reading goalPace, Constants constants) {
    Double metresPerSecond = speed.value();
    if (metresPerSecond != null) {
      return Reading.of(100 / metresPerSecond, Origin.TESTED, speed.entries());
    }
    Double goal = goalPace.value();
    double less = constants.of(Constant.SWIM_UNTESTED);
    return goal == null || goal <= less
        ? Reading.unknown(speed.because() + ", or " + goalPace.because())
        : Reading.of(goal - less, Origin.GOAL, goalPace.entries());
  }

  private static List<Athlete.Test> together(List<Athlete.Test> trials, Constants constants) {
    LocalDate newest = trials.get(0).date();
    Map<Double, Athlete.Test> byDistance = new LinkedHashMap<>();
    for (Athlete.Test test : trials) {
      if (ChronoUnit.DAYS.between(test.date(), newest)
          <= constants.of(Constant.SWIM_TRIALS_WITHIN)) {
        byDistance.putIfAbsent(test.metres(), test);
      }
    }
    return new ArrayList<>(byDistance.values());
  }

  private static CriticalSwimSpeed.@Nullable Trial trial(
      Athlete.Test test, LocalDate asOf, Constants constants) {
    Double metres = test.metres();
    Double seconds = test.seconds();
    if (test.sport() != Sport.SWIM
        || test.date().isAfter(asOf)
        || metres == null
        || seconds == null
        || seconds < constants.of(Constant.SWIM_TRIAL_SHORTEST)
        || seconds > constants.of(Constant.SWIM_TRIAL_LONGEST)) {
      return null;
    }
    return new CriticalSwimSpeed.Trial(metres, seconds);
  }

  private static double seconds(Athlete.Test test) {
    Double seconds = test.seconds();
    return seconds == null ? Double.MAX_VALUE : seconds;
  }
}
