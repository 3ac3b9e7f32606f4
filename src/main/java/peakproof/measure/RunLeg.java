package peakproof.measure;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Log;
import peakproof.document.Plan;
import peakproof.measure.Projected.Range;

/**
 * The race run from the newest test by both exponents, times what the legs cost after the ride:
 * bands by distance class, common practice, no source.
 */
final class RunLeg {
  private RunLeg() {}

  /** Times the run of the same distance done fresh. */
  private record Band(double fast, double likely, double slow) {}

  static Projected projected(
      Plan plan, @Nullable Log log, LocalDate asOf, Calibration athlete, Constants constants) {
    Double metres = plan.event().legs().run();
    Athlete.Test test = athlete.runTest();
    DistanceClass distance = athlete.distance();
    if (metres == null) {
      return Projected.unknown("the event's run leg");
    }
    if (distance == null) {
      return Projected.unknown("the event's distance");
    }
    if (test == null) {
      return Projected.unknown("a run race or test of the last weeks");
    }
    Band band = band(distance, constants);
    Range range = range(test, metres, band, constants);
    Projected projected =
        Projected.known(range, List.of(test.at()), arithmetic(test, metres, band, constants));
    String offBike = OffBikeRuns.of(log, asOf, constants).inWords();
    Projected checked = offBike.isEmpty() ? projected : projected.noting(offBike);
    Range likelier = range(raceOverHalf(test, metres, constants), metres, band, constants);
    double narrower = range.width() - likelier.width();
    return Limit.above(narrower, 0)
        ? checked.narrowedBy("a run race or test over " + km(metres / 2) + " or more", narrower)
        : checked;
  }

  private static Range range(Athlete.Test test, double metres, Band band, Constants constants) {
    double usual = RunTests.open(test, metres, constants.of(Constant.RIEGEL_EXPONENT));
    double cautious = RunTests.open(test, metres, constants.of(Constant.RIEGEL_CAUTIOUS));
    return new Range(
        band.fast * Math.min(usual, cautious),
        band.likely * (usual + cautious) / 2,
        band.slow * Math.max(usual, cautious));
  }

  /** The same runner in a race over half the leg, by the mean of both exponents. */
  private static Athlete.Test raceOverHalf(Athlete.Test test, double metres, Constants constants) {
    double half = metres / 2;
    double seconds =
        (RunTests.open(test, half, constants.of(Constant.RIEGEL_EXPONENT))
                + RunTests.open(test, half, constants.of(Constant.RIEGEL_CAUTIOUS)))
            / 2;
    return new Athlete.Test(test.at(), test.date(), test.sport(), half, null, seconds, null, null);
  }

  private static List<String> arithmetic(
      Athlete.Test test, double metres, Band band, Constants constants) {
    double usual = constants.of(Constant.RIEGEL_EXPONENT);
    double cautious = constants.of(Constant.RIEGEL_CAUTIOUS);
    Double raced = test.metres();
    Double seconds = test.seconds();
    return List.of(
        km(raced == null ? 0 : raced)
            + " in "
            + InWords.clock(seconds == null ? 0 : seconds)
            + " on "
            + test.date()
            + " is "
            + InWords.clock(RunTests.open(test, metres, usual))
            + " over the leg run fresh (exponent "
            + InWords.number(usual)
            + "), "
            + InWords.clock(RunTests.open(test, metres, cautious))
            + " ("
            + InWords.number(cautious)
            + ")",
        "times "
            + InWords.number(band.fast)
            + " to "
            + InWords.number(band.slow)
            + " off the bike, likely "
            + InWords.number(band.likely));
  }

  private static String km(double metres) {
    return InWords.number(metres / 1000) + " km";
  }

  private static Band band(DistanceClass distance, Constants constants) {
    return switch (distance) {
      case FULL ->
          band(
              Constant.RUN_LEG_FULL_FAST,
              Constant.RUN_LEG_FULL_LIKELY,
              Constant.RUN_LEG_FULL_SLOW,
              constants);
      case HALF ->
          band(
              Constant.RUN_LEG_HALF_FAST,
              Constant.RUN_LEG_HALF_LIKELY,
              Constant.RUN_LEG_HALF_SLOW,
              constants);
      case STANDARD ->
          band(
              Constant.RUN_LEG_STANDARD_FAST,
              Constant.RUN_LEG_STANDARD_LIKELY,
              Constant.RUN_LEG_STANDARD_SLOW,
              constants);
      case SPRINT ->
          band(
              Constant.RUN_LEG_SPRINT_FAST,
              Constant.RUN_LEG_SPRINT_LIKELY,
              Constant.RUN_LEG_SPRINT_SLOW,
              constants);
    };
  }

  private static Band band(Constant fast, Constant likely, Constant slow, Constants constants) {
    return new Band(constants.of(fast), constants.of(likely), constants.of(slow));
  }
}
