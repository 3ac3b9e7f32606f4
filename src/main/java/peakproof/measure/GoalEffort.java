package peakproof.measure;

import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.document.Target;

/** Whether a target is the goal's own: within 3 % of it. */
final class GoalEffort {
  private GoalEffort() {}

  static boolean matches(Target target, Sport sport, Calibration athlete, Constants constants) {
    double within = constants.of(Constant.GOAL_WITHIN);
    if (target instanceof Target.Pace pace) {
      return near(pace.secondsPerMetre(), secondsPerMetre(sport, athlete), within);
    }
    Target goal = athlete.bikeGoal();
    if (sport != Sport.BIKE || goal == null) {
      return false;
    }
    boolean alike = target.getClass().equals(goal.getClass());
    return (alike && near(asWritten(target), asWritten(goal), within))
        || near(
            DomainEdges.heartRate(target, athlete), DomainEdges.heartRate(goal, athlete), within)
        || near(watts(target, athlete), watts(goal, athlete), within);
  }

  /** Goal pace of a leg, or null. */
  static @Nullable Double secondsPerMetre(Sport sport, Calibration athlete) {
    Double swim = athlete.goalSwimPace().value();
    Double run = athlete.goalRunPace().value();
    Double bike = athlete.goalBikeSpeed().value();
    return switch (sport) {
      case SWIM -> swim == null ? null : swim / 100;
      case RUN -> run == null ? null : run / 1000;
      case BIKE -> bike == null ? null : Pace.secondsPerMetre(bike).value();
      case STRENGTH, OTHER -> null;
    };
  }

  /** Shares and ratings compare with their like without the athlete's own figures. */
  private static @Nullable Double asWritten(Target target) {
    if (target instanceof Target.Rating rating) {
      return rating.rating();
    }
    if (target instanceof Target.ShareOfMaximum share) {
      return share.share();
    }
    if (target instanceof Target.ShareOfReserve share) {
      return share.share();
    }
    return target instanceof Target.ShareOfCriticalPower share ? share.share() : null;
  }

  private static @Nullable Double watts(Target target, Calibration athlete) {
    Double critical = athlete.criticalPower().value();
    if (target instanceof Target.Power power) {
      return power.watts();
    }
    if (target instanceof Target.ShareOfCriticalPower share && critical != null) {
      return share.share() * critical;
    }
    return null;
  }

  private static boolean near(@Nullable Double value, @Nullable Double goal, double within) {
    return value != null && goal != null && !Limit.above(Math.abs(value - goal), within * goal);
  }
}
