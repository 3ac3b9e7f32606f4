package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.measure.DistanceClass;

/**
 * The race the plan leads to. Fields the event does not give are unknown.
 *
 * @param date race day
 * @param daysToGo days from the as-of date to race day
 * @param distance distance class
 * @param water lake, sea, river or pool
 * @param start mass, wave or rolling
 * @param starters how many start together
 * @param direction clockwise, anticlockwise, straight or both
 * @param chop true when the course is known for chop
 * @param lowSun true when swimmers look into a low sun
 * @param swimMetres length of the swim
 * @param bikeMetres length of the bike leg
 * @param runMetres length of the run
 * @param wetsuitLikely true when a wetsuit will likely be legal, false when not
 * @param expectedMinutes how long the day should take: the goal, else what is usual for the
 *     distance
 */
public record Race(
    LocalDate date,
    double daysToGo,
    @Nullable DistanceClass distance,
    @Nullable String water,
    @Nullable String start,
    @Nullable Double starters,
    @Nullable String direction,
    boolean chop,
    boolean lowSun,
    @Nullable Double swimMetres,
    @Nullable Double bikeMetres,
    @Nullable Double runMetres,
    @Nullable Boolean wetsuitLikely,
    @Nullable Double expectedMinutes)
    implements Fact {

  /** True when the swim is known to be outside a pool. */
  public boolean openWater() {
    return water != null && !water.equals("pool");
  }

  /**
   * True when the course makes breathing to both sides useful: chop, low sun or turns both ways.
   */
  public boolean asksForBothSides() {
    return chop || lowSun || "both".equals(direction);
  }

  @Override
  public List<Where> where() {
    return List.of(new Where("/event/date", null, null));
  }

  static @Nullable Boolean wetsuitLikely(Event event, double forbiddenAbove) {
    String rule = event.swim().wetsuit();
    Double temperature = event.swim().temperature();
    if (rule == null) {
      return null;
    }
    return switch (rule) {
      case "allowed", "required" -> Boolean.TRUE;
      case "forbidden" -> Boolean.FALSE;
      default -> temperature == null ? null : (Boolean) (temperature <= forbiddenAbove);
    };
  }
}
