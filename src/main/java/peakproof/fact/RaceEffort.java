package peakproof.fact;

import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.document.Session;
import peakproof.document.Target;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.DistanceClass;
import peakproof.measure.SetBreakdown;

/** Whether training was at the pace or effort of the race. */
final class RaceEffort {
  private final Plan plan;
  private final Calibration calibration;
  private final Constants constants;

  RaceEffort(Plan plan, Calibration calibration, Constants constants) {
    this.plan = plan;
    this.calibration = calibration;
    this.constants = constants;
  }

  boolean shortCourse() {
    return calibration.distance() == DistanceClass.STANDARD
        || calibration.distance() == DistanceClass.SPRINT;
  }

  /**
   * Whether a logged ride was at the goal's effort as a whole, by its mean power, heart rate or
   * rating, whichever the goal is written in; null when that cannot be told.
   */
  @Nullable Boolean atRaceEffort(Session.Recorded recorded) {
    Target goal = plan.goal() == null ? null : plan.goal().bikeEffort();
    if (goal == null) {
      return null;
    }
    Double critical = calibration.criticalPower().value();
    Double held;
    Double asked;
    if (goal instanceof Target.Power power) {
      held = recorded.power();
      asked = power.watts();
    } else if (goal instanceof Target.ShareOfCriticalPower share) {
      held = recorded.power();
      asked = critical == null ? null : (Double) (share.share() * critical);
    } else if (goal instanceof Target.Rating rating) {
      held = recorded.rpe();
      asked = rating.rating();
    } else {
      held = calibration.heartRateUsable() ? recorded.heartRate() : null;
      asked = heartRate(goal);
    }
    if (held == null || asked == null) {
      return null;
    }
    return held >= asked * (1 - constants.of(Constant.GOAL_WITHIN)) - 1e-9;
  }

  private @Nullable Double heartRate(Target goal) {
    Double maximum = calibration.maximumHeartRate();
    Double resting = calibration.restingHeartRate();
    if (goal instanceof Target.HeartRate rate) {
      return rate.bpm();
    }
    if (goal instanceof Target.ShareOfMaximum share && maximum != null) {
      return share.share() * maximum;
    }
    if (goal instanceof Target.ShareOfReserve share && maximum != null && resting != null) {
      return resting + share.share() * (maximum - resting);
    }
    return null;
  }

  /**
   * Whether a logged run without a set line was at goal pace by its mean pace, within the
   * glossary's share. Unknown without time, distance or goal, unless it was rated easy.
   */
  @Nullable Boolean loggedAtRacePace(Run run) {
    Double minutes = run.minutes();
    Double km = run.km();
    Double goal = calibration.goalRunPace().value();
    boolean shorter = minutes != null && minutes < constants.of(Constant.RACE_EFFORT_LEAST);
    if (run.planned() || run.set != null || shorter) {
      return false;
    }
    if (minutes == null || km == null || km <= 0 || goal == null) {
      Double rating = run.written.recorded().rpe();
      boolean easy = rating != null && rating <= constants.of(Constant.EDGE_RATING_MODERATE);
      return easy ? Boolean.FALSE : null;
    }
    double pace = minutes * 60 / km;
    return Math.abs(pace / goal - 1) <= constants.of(Constant.GOAL_WITHIN) + 1e-9;
  }

  /** By which share the fastest part labelled race is faster than the goal pace of the run. */
  @Nullable Double fasterThanGoal(SetBreakdown set) {
    Double pace = set.fastestRacePace();
    Double goal = calibration.goalRunPace().value();
    return pace == null || goal == null ? null : (Double) Exact.of(1 - pace / goal);
  }
}
