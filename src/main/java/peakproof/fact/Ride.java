package peakproof.fact;

import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;

/** A ride. */
public final class Ride extends Session {
  Ride(Draft draft) {
    super(draft);
  }

  @Override
  Sport sport() {
    return Sport.BIKE;
  }

  /** True for a long ride by the club's measure; false when its length is unknown. */
  public boolean longRide() {
    Double minutes = minutes();
    return minutes != null && minutes >= timeline.longSessions().leastMinutes(this) - 1e-9;
  }

  /**
   * Share of the ride at race effort. A logged ride counts as a whole by its mean power or heart
   * rate against the goal's effort; unknown when it has neither and no set line.
   */
  public @Nullable Double raceEffortShare() {
    Double minutes = minutes();
    if (minutes == null || minutes <= 0) {
      return null;
    }
    if (set != null) {
      return Exact.of(raceMinutes() / minutes);
    }
    Boolean atEffort = timeline.effort().atRaceEffort(written.recorded());
    return atEffort == null ? null : (Double) (atEffort ? 1.0 : 0.0);
  }

  /** True unless it is said to be indoors, off the road or on closed roads. */
  public boolean onOpenRoad() {
    String where = written.scene().where();
    return (where == null || where.equals("road")) && !"closed".equals(written.scene().traffic());
  }

  /** True in the dark or at dusk, in busy traffic or on a wet surface. */
  public boolean exposed() {
    return !conditions().isEmpty();
  }

  /** Those conditions, in words; empty without any. */
  public String conditions() {
    peakproof.document.Session.Scene scene = written.scene();
    return Stream.of(
            "day".equals(scene.light()) ? null : scene.light(),
            "busy".equals(scene.traffic()) ? "busy traffic" : null,
            "wet".equals(scene.surface()) ? "wet surface" : null)
        .filter(Objects::nonNull)
        .collect(Collectors.joining(", "));
  }

  /** Minutes in race position; unknown when not said. */
  public @Nullable Double aeroMinutes() {
    Double seconds = written.wear().aeroSeconds();
    return seconds == null ? null : (Double) (seconds / 60);
  }

  /** True on the race bike. */
  public boolean raceBike() {
    return written.wear().has("race-bike");
  }

  /** Metres of climb for each kilometre; unknown without its climb or its length. */
  @Nullable Double climbRate() {
    Double climb = written.scene().climb();
    Double km = km();
    return climb == null || km == null || km <= 0 ? null : (Double) Exact.of(climb / km);
  }

  /** True when it is said to be in a group. */
  boolean inGroup() {
    return "group".equals(written.scene().company());
  }

  /** True in race clothing. */
  public boolean raceClothing() {
    return written.wear().has("race-clothing");
  }
}
