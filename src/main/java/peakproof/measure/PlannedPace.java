package peakproof.measure;

import org.jspecify.annotations.Nullable;
import peakproof.document.Effort;
import peakproof.document.Sport;

/** How fast an effort word is done: common practice, no source. */
final class PlannedPace {
  private PlannedPace() {}

  /** Seconds per metre; null when the goal, tests or log it needs are missing. */
  static @Nullable Double of(Effort effort, Sport sport, Calibration athlete, Constants constants) {
    Double goal = GoalEffort.secondsPerMetre(sport, athlete);
    return switch (sport) {
      case SWIM -> swim(effort, goal, athlete.thresholdSwimPace().value(), constants);
      case RUN -> run(effort, goal, athlete.openMarathonPace().value(), constants);
      case BIKE -> effort == Effort.RACE && goal != null ? goal : ride(athlete);
      case STRENGTH, OTHER -> null;
    };
  }

  private static @Nullable Double swim(
      Effort effort, @Nullable Double goal, @Nullable Double critical, Constants constants) {
    return switch (effort) {
      case RACE -> goal;
      case DRILL -> slower(critical, constants.of(Constant.SWIM_DRILL));
      case EASY -> slower(critical, constants.of(Constant.SWIM_EASY));
      case STEADY -> slower(critical, constants.of(Constant.SWIM_STEADY));
      case THRESHOLD -> slower(critical, 0);
      case HARD -> slower(critical, -constants.of(Constant.SWIM_HARD));
      case MAX -> slower(critical, -constants.of(Constant.SWIM_MAX));
    };
  }

  /** Drills on foot are run at the easy pace: no pace of their own is in use. */
  private static @Nullable Double run(
      Effort effort, @Nullable Double goal, @Nullable Double open, Constants constants) {
    return switch (effort) {
      case RACE -> goal;
      case DRILL, EASY -> times(open, constants.of(Constant.RUN_EASY));
      case STEADY -> times(open, constants.of(Constant.RUN_STEADY));
      case THRESHOLD -> times(open, constants.of(Constant.RUN_THRESHOLD));
      case HARD -> times(open, constants.of(Constant.RUN_HARD));
      case MAX -> times(open, constants.of(Constant.RUN_MAX));
    };
  }

  private static @Nullable Double ride(Calibration athlete) {
    Double speed = athlete.rideSpeed().value();
    return speed == null ? null : Pace.secondsPerMetre(speed).value();
  }

  private static @Nullable Double slower(@Nullable Double per100m, double seconds) {
    return per100m == null || per100m + seconds <= 0 ? null : (per100m + seconds) / 100;
  }

  private static @Nullable Double times(@Nullable Double perKm, double factor) {
    return perKm == null ? null : factor * perKm / 1000;
  }
}
