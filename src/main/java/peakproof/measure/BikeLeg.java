package peakproof.measure;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.document.Target;

/**
 * The race ride from the median speed of logged long rides, those of race effort where there are
 * any. Common practice, no source.
 */
final class BikeLeg {
  private BikeLeg() {}

  static Projected projected(
      @Nullable Double metres,
      @Nullable Log log,
      LocalDate asOf,
      Calibration athlete,
      Constants constants) {
    if (metres == null) {
      return Projected.unknown("the event's bike leg");
    }
    double least = longRide(athlete, constants) * SetPieces.SECONDS_A_MINUTE;
    List<LoggedRides.Ride> rides =
        LoggedRides.of(log, asOf, constants).stream()
            .filter(ride -> !Limit.below(ride.seconds(), least))
            .toList();
    List<LoggedRides.Ride> raced =
        rides.stream().filter(ride -> raceEffort(ride.session(), athlete, constants)).toList();
    List<LoggedRides.Ride> used = raced.isEmpty() ? rides : raced;
    Double speed = Median.of(used.stream().map(LoggedRides.Ride::kmh).toList());
    if (speed == null) {
      return Projected.unknown("logged long rides of the last weeks with distance and time");
    }
    double band = constants.of(Constant.RIDE_SPEED_BAND);
    double likely = metres * Pace.secondsPerMetre(speed);
    return Projected.known(
        new Projected.Range(likely / (1 + band), likely, likely / (1 - band)),
        used.stream().map(ride -> ride.session().at()).toList());
  }

  private static double longRide(Calibration athlete, Constants constants) {
    DistanceClass distance = athlete.distance();
    boolean shortCourse = distance == DistanceClass.STANDARD || distance == DistanceClass.SPRINT;
    double share = shortCourse ? constants.of(Constant.LONG_SHORT_COURSE) : 1;
    return share * constants.of(Constant.LONG_RIDE);
  }

  /** By its set line, or by a mean power or heart rate within 3 % of the goal's. */
  private static boolean raceEffort(Session session, Calibration athlete, Constants constants) {
    Double power = session.recorded().power();
    Double rate = session.recorded().heartRate();
    if (power != null
        && GoalEffort.matches(new Target.Power(power), Sport.BIKE, athlete, constants)) {
      return true;
    }
    if (rate != null
        && athlete.heartRateUsable()
        && GoalEffort.matches(new Target.HeartRate(rate), Sport.BIKE, athlete, constants)) {
      return true;
    }
    if (session.set() == null) {
      return false;
    }
    Double minutes = SetBreakdown.of(session.set(), Sport.BIKE, athlete, constants).raceMinutes();
    return minutes != null && !Limit.below(minutes, constants.of(Constant.RACE_EFFORT_LEAST));
  }
}
