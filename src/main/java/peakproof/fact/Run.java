package peakproof.fact;

import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.measure.Constant;
import peakproof.measure.RunSpike;

/** A run. */
public final class Run extends Session {
  Run(Draft draft) {
    super(draft);
  }

  @Override
  Sport sport() {
    return Sport.RUN;
  }

  /** True for a long run by the club's measure; false when its length is unknown. */
  public boolean longRun() {
    Double minutes = minutes();
    return minutes != null && minutes >= timeline.longSessions().leastMinutes(this) - 1e-9;
  }

  /** True for a hard or long run. */
  public boolean keyRun() {
    return hard() || longRun();
  }

  /** The hard or long run of the day before, in words; null without one not stated as meant. */
  public @Nullable String keyRunOnEve() {
    Run eve = KeyRuns.onEve(this, timeline);
    return eve == null ? null : eve.label();
  }

  /** True when its day states that it follows the day before on purpose. */
  public boolean backToBack() {
    Day day = timeline.at(date());
    return day != null && day.backToBack();
  }

  /** True straight off the bike, or within minutes of a ride by the clock. */
  public boolean offBike() {
    return ride() != null;
  }

  /** Minutes of the ride it follows; unknown when it follows none. */
  public @Nullable Double rideMinutes() {
    Ride ride = ride();
    return ride == null ? null : ride.minutes();
  }

  /** True when the ride it follows is hard. */
  public boolean rideHard() {
    Ride ride = ride();
    return ride != null && ride.hard();
  }

  @Nullable Ride ride() {
    return timeline.bricks().ride(this);
  }

  /** Whether ten minutes or more are at goal pace; unknown for a log that does not say. */
  @Nullable Boolean atRacePace() {
    return raceMinutes() >= timeline.constant(Constant.RACE_EFFORT_LEAST) - 1e-9
        ? Boolean.TRUE
        : timeline.effort().loggedAtRacePace(this);
  }

  /**
   * Whether any of it, however short, is faster than easy running and the race effort of a long
   * race; null when that cannot be told: a mean hides short fast parts.
   */
  @Nullable Boolean fast() {
    if (set == null) {
      return null;
    }
    Double race = set.raceMinutes();
    Double heavy = set.domains().heavy();
    Double severe = set.domains().severe();
    Double other = set.domains().unclassified();
    if (race == null || heavy == null || severe == null || other == null) {
      return null;
    }
    double spared = timeline.effort().shortCourse() ? 0 : race;
    return severe > 0 || heavy - spared > 1e-9 ? Boolean.TRUE : other > 0 ? null : (Boolean) false;
  }

  /** Metres it goes down for each kilometre; unknown when either is not said. */
  @Nullable Double descentPerKm() {
    Double descent = written.scene().descent();
    Double km = km();
    return descent == null || km == null || km <= 0 ? null : (Double) Exact.of(descent / km);
  }

  /**
   * Minutes that are or may have been at goal pace: by its set line, else all of a logged run whose
   * mean pace is the goal's or cannot be told.
   */
  double goalPaceMinutes() {
    Double minutes = minutes();
    return minutes == null || Boolean.FALSE.equals(timeline.effort().loggedAtRacePace(this))
        ? raceMinutes()
        : Math.max(minutes, raceMinutes());
  }

  /** By which share the parts labelled race are faster than the goal; unknown without a target. */
  public @Nullable Double fasterThanGoal() {
    return set == null ? null : timeline.effort().fasterThanGoal(set);
  }

  /** Longest run of the 30 days before, km; unknown when those days are not known well enough. */
  public @Nullable Double longestBeforeKm() {
    RunSpike spike = timeline.runs().compare(this).spike();
    Double metres = spike == null ? null : spike.longest();
    return metres == null ? null : (Double) (metres / 1000);
  }

  /** How much longer than the longest run of the 30 days before, as a share; 0.1 is 10 % longer. */
  public @Nullable Double spike() {
    RunSpike spike = timeline.runs().compare(this).spike();
    return spike == null ? null : Exact.of(spike.share());
  }

  boolean spikeKnown() {
    RunSpike spike = timeline.runs().compare(this).spike();
    return spike != null && spike.known();
  }

  /** True when the longest run before is only stated by the coach. */
  public boolean spikeEstimated() {
    return timeline.runs().compare(this).stated();
  }

  /** Days without a run before it; unknown when a day between is not known. */
  public @Nullable Double daysWithoutRun() {
    return timeline.runs().daysWithout(this);
  }

  /**
   * Minutes of the longest ride on its day or the day before, the one it comes straight off left
   * out; none is 0.
   */
  public double rideWithinDayMinutes() {
    return timeline.bricks().longestRideWithinDay(this);
  }
}
