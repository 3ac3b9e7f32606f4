package peakproof.measure;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.Plan;
import peakproof.measure.Projected.Range;

/**
 * The race ride by the power equation where there is power, else from the median speed of logged
 * long rides, those of race effort where there are any. Common practice, no source.
 */
final class BikeLeg {
  private BikeLeg() {}

  static Projected projected(
      Plan plan, @Nullable Log log, LocalDate asOf, Calibration athlete, Constants constants) {
    Double metres = plan.event().legs().bike();
    if (metres == null) {
      return Projected.unknown("the event's bike leg");
    }
    LongRides rides = LongRides.of(log, asOf, athlete, constants);
    Projected byPower = PoweredRide.projected(plan, metres, rides, athlete, constants);
    Projected bySpeed = bySpeed(metres, rides, constants);
    Range range = bySpeed.range();
    if (byPower.range() != null) {
      return range == null
          ? byPower
          : byPower.noting(
              "for comparison, "
                  + bySpeed.arithmetic().get(0)
                  + ": "
                  + Digits.clock(range.likely()));
    }
    return range == null
        ? Projected.unknown(byPower.because() + "; or " + bySpeed.because())
        : bySpeed.noting("not by the power equation, which needs " + byPower.because());
  }

  private static Projected bySpeed(double metres, LongRides rides, Constants constants) {
    List<LoggedRides.Ride> used = rides.best();
    Double speed = Median.of(used.stream().map(LoggedRides.Ride::kmh).toList());
    if (speed == null) {
      return Projected.unknown("logged long rides of the last weeks with distance and time");
    }
    double band = constants.of(Constant.RIDE_SPEED_BAND);
    double likely = metres * (Pace.KMH / speed);
    return Projected.of(
        new Range(likely / (1 + band), likely, likely / (1 - band)),
        used.stream().map(ride -> ride.session().at()).toList(),
        List.of(
            "median speed "
                + InWords.number(speed)
                + " km/h of "
                + used.size()
                + (used.size() == 1 ? " logged long ride" : " logged long rides")
                + (rides.raced().isEmpty() ? ", none of them at race effort" : " at race effort")));
  }
}
