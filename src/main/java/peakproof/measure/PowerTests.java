package peakproof.measure;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import peakproof.document.Athlete;
import peakproof.document.Sport;
import peakproof.measure.Reading.Origin;

/** Critical power as the coach gives it, else from tests on the bike with mean power. */
final class PowerTests {
  private PowerTests() {}

  static Reading criticalPower(Athlete athlete, LocalDate asOf, Constants constants) {
    Double stated = athlete.criticalPower();
    if (stated != null) {
      return Reading.of(stated, Origin.STATED, List.of(athlete.at() + "/bike/critical-power"));
    }
    List<Athlete.Test> tests = tests(athlete, asOf, constants);
    CriticalRate.Fit fit =
        CriticalRate.of(tests.stream().flatMap(PowerTests::trial).toList(), constants).workTime();
    return fit == null
        ? Reading.unknown(
            "the athlete's critical-power under bike, or two power tests to exhaustion")
        : Reading.of(fit.critical(), Origin.TESTED, tests.stream().map(Athlete.Test::at).toList());
  }

  /** Those of the last 16 weeks. */
  private static List<Athlete.Test> tests(Athlete athlete, LocalDate asOf, Constants constants) {
    LocalDate oldest = asOf.minusWeeks((long) constants.of(Constant.RACE_WEEKS));
    return athlete.tests().stream()
        .filter(test -> test.sport() == Sport.BIKE && trial(test).findAny().isPresent())
        .filter(test -> !test.date().isAfter(asOf) && !test.date().isBefore(oldest))
        .toList();
  }

  private static Stream<CriticalRate.Trial> trial(Athlete.Test test) {
    Double power = test.power();
    Double seconds = test.workSeconds();
    return power == null || seconds == null
        ? Stream.empty()
        : Stream.of(new CriticalRate.Trial(test.date(), power, seconds));
  }
}
