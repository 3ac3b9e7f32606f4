package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was worn and practised. A plan is taken at its word: what it does not list is not planned. A
 * log that never lists a kind of thing is not: then what it does not say is unknown.
 */
final class Skills {
  private final boolean logsPractice;
  private final boolean logsVenue;
  private final boolean logsCompany;
  private final boolean logsRideKit;
  private final boolean logsAero;
  private final boolean logsDescent;

  Skills(List<Session> done) {
    logsPractice = done.stream().anyMatch(s -> s.written.wear().practise() != null);
    logsVenue = done.stream().anyMatch(s -> s instanceof Swim && s.written.scene().where() != null);
    logsCompany =
        done.stream().anyMatch(s -> s instanceof Swim && s.written.scene().company() != null);
    logsRideKit = done.stream().anyMatch(s -> s instanceof Ride && s.written.wear().kit() != null);
    logsAero =
        done.stream().anyMatch(s -> s instanceof Ride && s.written.wear().aeroSeconds() != null);
    logsDescent =
        done.stream().anyMatch(s -> s instanceof Run && s.written.scene().descent() != null);
  }

  /** Metres down a kilometre: 0 where none are given, unknown when the log never gives any. */
  @Nullable Double descentPerKm(Run run) {
    boolean silent = run.written.scene().descent() == null;
    return silent && (run.planned() || logsDescent) ? (Double) 0.0 : run.descentPerKm();
  }

  private static @Nullable Boolean said(
      Session session, boolean has, boolean listed, boolean used) {
    return has || listed || session.planned() || used ? (Boolean) has : null;
  }

  Tally practised(List<Swim> swims, String skill) {
    return Tally.count(
        swims,
        swim ->
            said(
                swim,
                swim.written.wear().practises(skill),
                swim.written.wear().practise() != null,
                logsPractice),
        "practise of the swims in the log");
  }

  /** Changes from one sport to the next: by name, from the water onto the bike, and in a race. */
  Tally transitions(List<Session> sessions) {
    return Tally.count(
        sessions,
        session ->
            said(
                session,
                session.written.wear().practises("transition") || changesSport(session),
                session.written.wear().practise() != null,
                logsPractice),
        "practise of the sessions in the log");
  }

  private static boolean changesSport(Session session) {
    return session.written.race() != null
        || session instanceof Ride && session.before instanceof Swim;
  }

  @Nullable Boolean openWater(Swim swim) {
    return said(swim, swim.openWater(), swim.written.scene().where() != null, logsVenue);
  }

  /** In open water without a wetsuit. */
  @Nullable Boolean suitless(Swim swim) {
    return swim.wetsuit() ? (Boolean) false : openWater(swim);
  }

  /** In open water the kit list is complete, and without one no wetsuit is worn. */
  @Nullable Boolean wetsuit(Swim swim) {
    return swim.wetsuit();
  }

  @Nullable Boolean inCompany(Swim swim) {
    boolean contact = swim.written.wear().practises("contact");
    return said(
        swim, swim.inCompany() || contact, swim.written.scene().company() != null, logsCompany);
  }

  @Nullable Boolean raceBike(Ride ride) {
    return said(ride, ride.raceBike(), ride.written.wear().kit() != null, logsRideKit);
  }

  /** Minutes in race clothing: 0 without it, unknown when the log never lists kit. */
  @Nullable Double raceClothingMinutes(Ride ride) {
    Boolean worn = said(ride, ride.raceClothing(), ride.written.wear().kit() != null, logsRideKit);
    return worn == null ? null : worn ? ride.minutes() : (Double) 0.0;
  }

  /**
   * Pooled over the rides: position is trained in hours, not in rides. A ride without race effort
   * that does not tell of it counts only where there is no other.
   */
  Tally aeroShare(List<Ride> rides) {
    List<Ride> telling =
        rides.stream()
            .filter(ride -> ride.aeroMinutes() != null || !isWithoutRaceEffort(ride))
            .toList();
    double aero = 0;
    double all = 0;
    boolean doubt = false;
    for (Ride ride : telling.isEmpty() ? rides : telling) {
      Double minutes = ride.minutes();
      Double held = ride.aeroMinutes();
      if (minutes == null || held == null && !ride.planned() && !logsAero) {
        doubt = true;
      } else {
        all += minutes;
        aero += held == null ? 0 : held;
      }
    }
    return new Tally(all > 0 ? aero / all : 0, doubt ? "aero of the long rides" : null);
  }

  private static boolean isWithoutRaceEffort(Ride ride) {
    Double share = ride.raceEffortShare();
    return share != null && share <= 0;
  }
}
