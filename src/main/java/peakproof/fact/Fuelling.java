package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.measure.Constant;
import peakproof.measure.Constants;

/**
 * Which sessions are fuelled as the race is to be: at its rate, with its products. A log that never
 * says what was eaten does not tell; neither does a rate or product left out beside the other.
 * Without a rate for the race none is like it.
 */
final class Fuelling {
  private static final String ENTRY = "fuel with carbohydrate and products";

  private final @Nullable Double bike;
  private final @Nullable Double run;
  private final double least;
  private final double longFrom;
  private final boolean logged;

  Fuelling(Plan plan, List<Session> sessions, Constants constants) {
    Plan.RaceDay day = plan.raceDay();
    this.bike = day == null || day.bikeFuel() == null ? null : day.bikeFuel().carbohydrate();
    this.run = day == null || day.runFuel() == null ? null : day.runFuel().carbohydrate();
    this.least = constants.of(Constant.FUEL_AT_RATE);
    this.longFrom = constants.of(Constant.FUEL_LONG);
    this.logged = sessions.stream().anyMatch(s -> !s.planned() && s.written.fuel() != null);
  }

  /** Long rides and runs, or long enough to feed in; one of unknown length may be long. */
  Tally longSessions(List<Session> sessions) {
    return Tally.count(sessions, this::longLikeTheRace, ENTRY + " of the long sessions");
  }

  private @Nullable Boolean longLikeTheRace(Session session) {
    boolean moving = session instanceof Ride || session instanceof Run;
    Double minutes = session.minutes();
    boolean mayBeLong =
        minutes == null
            || minutes >= longFrom - 1e-9
            || session instanceof Ride ride && ride.longRide()
            || session instanceof Run aRun && aRun.longRun();
    Boolean fed = moving && mayBeLong ? likeTheRace(session) : Boolean.FALSE;
    return Boolean.TRUE.equals(fed) && minutes == null ? null : fed;
  }

  Tally runs(List<Run> runs) {
    return Tally.count(runs, this::likeTheRace, ENTRY + " of the runs");
  }

  private @Nullable Boolean likeTheRace(Session session) {
    Double asked = session instanceof Ride ? bike : run;
    peakproof.document.Session.Fuel fuel = session.written.fuel();
    if (asked == null) {
      return false;
    }
    if (fuel == null) {
      return session.planned() || logged ? (Boolean) false : null;
    }
    Double rate = fuel.carbohydrate();
    if (rate == null) {
      return null;
    }
    boolean enough = rate >= least * asked - 1e-9;
    return !enough ? Boolean.FALSE : fuel.products() != null ? Boolean.TRUE : null;
  }
}
