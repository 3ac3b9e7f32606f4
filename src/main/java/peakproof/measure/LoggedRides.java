package peakproof.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.measure.Reading.Origin;

/** The rides of the last weeks of a log that have both distance and time. */
final class LoggedRides {
  private LoggedRides() {}

  /** A ride, with its seconds and its mean speed. */
  record Ride(Session session, double seconds, double kmh) {}

  /** Rides of the 8 weeks that end on the as-of date, those straight out of the water too. */
  static List<Ride> of(@Nullable Log log, LocalDate asOf, Constants constants) {
    List<Ride> rides = new ArrayList<>();
    if (log != null) {
      LocalDate first = asOf.minusWeeks((long) constants.of(Constant.RIDE_WEEKS)).plusDays(1);
      for (Log.Day day : log.days().subMap(first, asOf.plusDays(1)).values()) {
        day.sessions().forEach(session -> collect(session, rides));
      }
    }
    return rides;
  }

  /** Their median speed, km/h. */
  static Reading medianSpeed(@Nullable Log log, LocalDate asOf, Constants constants) {
    List<Ride> rides = of(log, asOf, constants);
    Double median = Median.of(rides.stream().map(Ride::kmh).toList());
    return median == null
        ? Reading.unknown("logged rides of the last weeks with distance and time")
        : Reading.of(
            median, Origin.TESTED, rides.stream().map(ride -> ride.session().at()).toList());
  }

  private static void collect(@Nullable Session first, List<Ride> rides) {
    for (Session session = first; session != null; session = session.then()) {
      Double metres = session.recorded().metres();
      Double seconds = session.recorded().seconds();
      if (session.sport() == Sport.BIKE && metres != null && seconds != null) {
        Double kmh = Pace.kmh(metres, seconds).value();
        if (kmh != null) {
          rides.add(new Ride(session, seconds, kmh));
        }
      }
    }
  }
}
