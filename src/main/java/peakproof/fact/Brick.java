package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A run straight after a ride.
 *
 * @param rideShare the ride as a share of the race's bike leg goal; unknown without a goal
 * @param runShare the run as a share of the race's run; unknown when its length is
 */
public record Brick(Ride ride, Run run, @Nullable Double rideShare, @Nullable Double runShare)
    implements Fact {

  /** Its day. */
  public LocalDate date() {
    return run.date();
  }

  /** Days before race day. */
  public double daysToRace() {
    return run.daysToRace();
  }

  /** True when it is still to come. */
  public boolean planned() {
    return run.planned();
  }

  /** Minutes of the ride. */
  public @Nullable Double rideMinutes() {
    return ride.minutes();
  }

  /** Minutes of the run. */
  public @Nullable Double runMinutes() {
    return run.minutes();
  }

  /**
   * Minutes of the run that are or may have been at race effort: by its set line, else all of a
   * logged run whose mean pace is the goal's or cannot be told.
   */
  public double runRaceMinutes() {
    return run.goalPaceMinutes();
  }

  /** The session in words. */
  public String label() {
    return ride.label() + ", then " + run.label();
  }

  @Override
  public List<Where> where() {
    return ride.where();
  }
}
