package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.measure.Constant;
import peakproof.measure.Constants;

/**
 * Which sessions are fuelled as the race is to be: at its rate, with its products. A log that never
 * says what was eaten does not tell; neither does a rate or product left out beside the other.
 */
final class Fuelling {
  private static final String ENTRY = "fuel with carbohydrate and products";

  private final @Nullable Double bike;
  private final @Nullable Double run;
  private final double least;
  private final boolean logged;

  Fuelling(Plan plan, List<Session> sessions, Constants constants) {
    Plan.RaceDay day = plan.raceDay();
    this.bike = day == null || day.bikeFuel() == null ? null : day.bikeFuel().carbohydrate();
    this.run = day == null || day.runFuel() == null ? null : day.runFuel().carbohydrate();
    this.least = constants.of(Constant.FUEL_AT_RATE);
    this.logged = sessions.stream().anyMatch(s -> !s.planned() && s.written.fuel() != null);
  }

  /** Long rides and long runs. */
  Tally longSessions(List<Session> sessions) {
    List<Session> longer =
        sessions.stream()
            .filter(
                s -> s instanceof Ride ride && ride.longRide() || s instanceof Run r && r.longRun())
            .toList();
    return Tally.count(longer, this::likeTheRace, ENTRY + " of the long sessions");
  }

  Tally runs(List<Run> runs) {
    return Tally.count(runs, this::likeTheRace, ENTRY + " of the runs");
  }

  private @Nullable Boolean likeTheRace(Session session) {
    Double asked = session instanceof Ride ? bike : run;
    peakproof.document.Session.Fuel fuel = session.written.fuel();
    if (fuel == null) {
      return session.planned() || logged ? (Boolean) false : null;
    }
    Double rate = fuel.carbohydrate();
    if (asked == null || rate == null) {
      return null;
    }
    boolean enough = rate >= least * asked - 1e-9;
    return !enough ? Boolean.FALSE : fuel.products() != null ? Boolean.TRUE : null;
  }
}
