package peakproof.measure;

import org.jspecify.annotations.Nullable;
import peakproof.document.Effort;
import peakproof.document.Sport;
import peakproof.document.Target;
import peakproof.measure.Reading.Origin;

/**
 * What an athlete can hold on to while doing a planned part: the word or target of the plan in
 * figures of this athlete. An effort word has figures only where a test, the coach or the goal
 * gives them: a guess that is good enough to estimate minutes is not passed on as an order.
 */
public sealed interface Guide {
  /** A pace, seconds per metre. */
  record Pace(double secondsPerMetre) implements Guide {
    @Override
    public boolean finite() {
      return Double.isFinite(secondsPerMetre);
    }
  }

  /**
   * Power in watts.
   *
   * @param bound how the figure bounds the effort
   */
  record Power(double watts, Bound bound) implements Guide {
    @Override
    public boolean finite() {
      return Double.isFinite(watts);
    }
  }

  /** A heart rate in beats a minute; null where only the share can be told. */
  record HeartRate(@Nullable Double bpm, @Nullable Double share, boolean ofReserve)
      implements Guide {
    @Override
    public boolean finite() {
      return (bpm == null || Double.isFinite(bpm)) && (share == null || Double.isFinite(share));
    }
  }

  /** A share of a critical power that is not known. */
  record ShareOfCriticalPower(double share) implements Guide {
    @Override
    public boolean finite() {
      return Double.isFinite(share);
    }
  }

  /** A rating, 0 to 10. */
  record Rating(double rating) implements Guide {
    @Override
    public boolean finite() {
      return Double.isFinite(rating);
    }
  }

  /** True when its figures are numbers; those of absurd targets may not be. */
  boolean finite();

  /** How a figure bounds an effort. */
  enum Bound {
    AT,
    BELOW,
    UP_TO,
    ABOVE
  }

  /**
   * A target in figures; shares of what is not known stay shares. Null where figures are beyond all
   * bounds.
   */
  static @Nullable Guide of(Target target, Calibration athlete) {
    Guide guide = figures(target, athlete);
    return guide.finite() ? guide : null;
  }

  private static Guide figures(Target target, Calibration athlete) {
    if (target instanceof Target.Pace pace) {
      return new Pace(pace.secondsPerMetre());
    }
    if (target instanceof Target.Power power) {
      return new Power(power.watts(), Bound.AT);
    }
    if (target instanceof Target.ShareOfCriticalPower share) {
      Double critical = athlete.criticalPower().value();
      return critical == null
          ? new ShareOfCriticalPower(share.share())
          : new Power(share.share() * critical, Bound.AT);
    }
    if (target instanceof Target.Rating rating) {
      return new Rating(rating.rating());
    }
    boolean written = target instanceof Target.HeartRate;
    Double bpm =
        written || athlete.heartRateUsable() ? DomainEdges.heartRate(target, athlete) : null;
    boolean ofReserve = target instanceof Target.ShareOfReserve;
    Double share =
        target instanceof Target.ShareOfMaximum most
            ? (Double) most.share()
            : target instanceof Target.ShareOfReserve reserve ? (Double) reserve.share() : null;
    return new HeartRate(bpm, share, ofReserve);
  }

  /**
   * An effort word in figures; null where no test, figure of the coach or goal gives any, and for
   * drills and all-out work, which are not held to one.
   */
  static @Nullable Guide of(Effort effort, Sport sport, Calibration athlete, Constants constants) {
    if (effort == Effort.DRILL || effort == Effort.MAX) {
      return null;
    }
    if (sport == Sport.BIKE) {
      return riding(effort, athlete, constants);
    }
    Origin origin =
        sport == Sport.SWIM
            ? athlete.thresholdSwimPace().origin()
            : athlete.openMarathonPace().origin();
    if (effort != Effort.RACE && origin == Origin.GOAL) {
      return null;
    }
    Double pace = PlannedPace.of(effort, sport, athlete, constants);
    return pace == null ? null : new Pace(pace);
  }

  private static @Nullable Guide riding(Effort effort, Calibration athlete, Constants constants) {
    if (effort == Effort.RACE) {
      Target goal = athlete.bikeGoal();
      Double speed = GoalEffort.secondsPerMetre(Sport.BIKE, athlete);
      if (goal != null) {
        return of(goal, athlete);
      }
      return speed == null ? null : new Pace(speed);
    }
    Double critical = athlete.criticalPower().value();
    if (critical == null) {
      return null;
    }
    return switch (effort) {
      case STEADY -> new Power(constants.of(Constant.EDGE_POWER_MODERATE) * critical, Bound.BELOW);
      case THRESHOLD -> new Power(critical, Bound.UP_TO);
      case HARD -> new Power(critical, Bound.ABOVE);
      case DRILL, EASY, RACE, MAX -> null;
    };
  }
}
