package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the athlete is after, and what tests say of it.
 *
 * @param swimMinutes goal for the swim
 * @param bikeMinutes goal for the bike leg
 * @param runMinutes goal for the run
 * @param totalMinutes goal for the day
 * @param sumMinutes legs and transitions together, when all are given
 * @param swimPace goal pace, seconds per 100 m
 * @param criticalSwimPace pace at critical swim speed, seconds per 100 m, from tests
 * @param heldSwimPace what the newest goal-pace set was held at, seconds per 100 m
 */
public record Goal(
    String pointer,
    @Nullable Double swimMinutes,
    @Nullable Double bikeMinutes,
    @Nullable Double runMinutes,
    @Nullable Double totalMinutes,
    @Nullable Double sumMinutes,
    @Nullable Double swimPace,
    @Nullable Double criticalSwimPace,
    @Nullable Double heldSwimPace)
    implements Fact {

  /** By how many minutes the legs and the total disagree; unknown unless all are given. */
  public @Nullable Double gapMinutes() {
    return totalMinutes == null || sumMinutes == null ? null : Math.abs(totalMinutes - sumMinutes);
  }

  /** Seconds per 100 m the goal is slower than critical swim speed; negative when it is faster. */
  public @Nullable Double slowerThanCritical() {
    return swimPace == null || criticalSwimPace == null
        ? null
        : (Double) Exact.of(swimPace - criticalSwimPace);
  }

  /** Seconds per 100 m the goal is faster than what the newest goal-pace set was held at. */
  public @Nullable Double fasterThanHeld() {
    return swimPace == null || heldSwimPace == null
        ? null
        : (Double) Exact.of(heldSwimPace - swimPace);
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
