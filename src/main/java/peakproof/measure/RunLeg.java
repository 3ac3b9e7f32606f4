package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;

/**
 * The race run from the newest test by both exponents, times what the legs cost after the ride:
 * bands by distance class, common practice, no source.
 */
final class RunLeg {
  private RunLeg() {}

  /** Times the run of the same distance done fresh. */
  private record Band(double fast, double likely, double slow) {}

  static Projected projected(@Nullable Double metres, Calibration athlete, Constants constants) {
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
    double usual = RunTests.open(test, metres, constants.of(Constant.RIEGEL_EXPONENT));
    double cautious = RunTests.open(test, metres, constants.of(Constant.RIEGEL_CAUTIOUS));
    Band band = band(distance, constants);
    return Projected.known(
        new Projected.Range(
            band.fast * Math.min(usual, cautious),
            band.likely * (usual + cautious) / 2,
            band.slow * Math.max(usual, cautious)),
        List.of(test.at()));
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
