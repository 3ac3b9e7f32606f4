package peakproof.measure;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.document.Target;

/**
 * The logged long rides of the last weeks with distance and time.
 *
 * @param all of them
 * @param raced those at race effort
 */
record LongRides(List<LoggedRides.Ride> all, List<LoggedRides.Ride> raced) {

  static LongRides of(@Nullable Log log, LocalDate asOf, Calibration athlete, Constants constants) {
    double least = longRide(athlete, constants) * SetPieces.SECONDS_A_MINUTE;
    List<LoggedRides.Ride> all =
        LoggedRides.of(log, asOf, constants).stream()
            .filter(ride -> !Limit.below(ride.seconds(), least))
            .toList();
    return new LongRides(
        all, all.stream().filter(ride -> raceEffort(ride.session(), athlete, constants)).toList());
  }

  /** Those at race effort, or all where none is. */
  List<LoggedRides.Ride> best() {
    return raced.isEmpty() ? all : raced;
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
