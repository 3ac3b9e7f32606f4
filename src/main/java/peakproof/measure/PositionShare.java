package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The share of riding time spent in race position. */
public final class PositionShare {
  private PositionShare() {}

  /**
   * A ride.
   *
   * @param minutes of it; null when unknown
   * @param inPosition minutes in race position; null when unknown
   */
  public record Ride(@Nullable Double minutes, @Nullable Double inPosition) {}

  /** Of some rides pooled, 0 to 1; unknown when a ride is, or there was none. */
  public static Amount of(List<Ride> rides) {
    double all = 0;
    double held = 0;
    for (Ride ride : rides) {
      Double minutes = ride.minutes;
      Double position = ride.inPosition;
      if (minutes == null || position == null || !(position >= 0) || !(position <= minutes)) {
        return Amount.unknown("the time in race position of every ride");
      }
      all += minutes;
      held += position;
    }
    return Limit.positive(all)
        ? Amount.of(held / all)
        : Amount.unknown("the time in race position of a ride");
  }
}
