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

  /** Seconds of a distance run fresh, by either exponent. */
  private record Open(double usual, double cautious) {

    /** Null when a test says nothing of the distance. */
    static @Nullable Open of(Athlete.Test test, double metres, Constants constants) {
      Double usual = RunTests.open(test, metres, constants.of(Constant.RIEGEL_EXPONENT)).value();
      Double cautious = RunTests.open(test, metres, constants.of(Constant.RIEGEL_CAUTIOUS)).value();
      return usual == null || cautious == null ? null : new Open(usual, cautious);
    }

    double mean() {
      return (usual + cautious) / 2;
    }

    Range offTheBike(Band band) {
      return new Range(
          band.fast * Math.min(usual, cautious),
          band.likely * mean(),
          band.slow * Math.max(usual, cautious));
    }
  }

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
    Open open = test == null ? null : Open.of(test, metres, constants);
    Open half = test == null ? null : Open.of(test, metres / 2, constants);
    if (test == null || open == null || half == null) {
      return Projected.unknown("a run race or test of the last weeks");
    }
    Band band = band(distance, constants);
    Projected projected =
        Projected.of(
            open.offTheBike(band), List.of(test.at()), arithmetic(test, open, band, constants));
    String offBike = OffBikeRuns.of(log, asOf, constants).inWords();
    Projected checked = offBike.isEmpty() ? projected : projected.noting(offBike);
    Open likelier = Open.of(raceOver(test, metres / 2, half.mean()), metres, constants);
    double narrower =
        likelier == null ? 0 : open.offTheBike(band).width() - likelier.offTheBike(band).width();
    return Limit.above(narrower, 0)
        ? checked.narrowedBy("a run race or test over " + km(metres / 2) + " or more", narrower)
        : checked;
  }

  /** The same runner in another race. */
  private static Athlete.Test raceOver(Athlete.Test test, double metres, double seconds) {
    return new Athlete.Test(
        test.at(), test.date(), test.sport(), metres, null, seconds, null, null);
  }

  private static List<String> arithmetic(
      Athlete.Test test, Open open, Band band, Constants constants) {
    Double raced = test.metres();
    Double seconds = test.seconds();
    return List.of(
        km(raced == null ? 0 : raced)
            + " in "
            + Digits.clock(seconds == null ? 0 : seconds)
            + " on "
            + test.date()
            + " is "
            + Digits.clock(open.usual)
            + " over the leg run fresh (exponent "
            + InWords.number(constants.of(Constant.RIEGEL_EXPONENT))
            + "), "
            + Digits.clock(open.cautious)
            + " ("
            + InWords.number(constants.of(Constant.RIEGEL_CAUTIOUS))
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
