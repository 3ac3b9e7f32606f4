package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;

/**
 * The bike leg of the race.
 *
 * @param climbRate metres of climb for each kilometre; unknown without climb or length
 * @param draftZoneNoted true when the event says how long the zone between riders is
 */
public record BikeCourse(String pointer, @Nullable Double climbRate, boolean draftZoneNoted)
    implements Fact {

  static BikeCourse of(Event event) {
    Double climb = event.bike().climb();
    Double metres = event.legs().bike();
    return new BikeCourse(
        event.at() + "/bike",
        climb == null || metres == null || metres <= 0
            ? null
            : (Double) Exact.of(climb / (metres / 1000)),
        event.bike().draftZone() != null);
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
