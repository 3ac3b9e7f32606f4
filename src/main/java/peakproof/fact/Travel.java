package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;

/**
 * The journey to the race, while it is still to come.
 *
 * @param arrives day of arrival
 * @param daysBefore days from arrival to race day: two from Friday to Sunday, whatever the hour
 * @param zonesEast time zones crossed eastward; 0 westward and where none is written
 */
public record Travel(String pointer, LocalDate arrives, double daysBefore, double zonesEast)
    implements Fact {

  /** Null without an arrival to come. */
  static @Nullable Travel of(Plan plan, Timeline timeline) {
    Plan.Travel travel = plan.travel();
    if (travel == null || travel.arrive() == null) {
      return null;
    }
    LocalDate arrives = travel.arrive().toLocalDate();
    return arrives.isBefore(timeline.firstChangeable())
        ? null
        : new Travel(
            travel.at(),
            arrives,
            ChronoUnit.DAYS.between(arrives, timeline.raceDate()),
            travel.zones() == null ? 0 : Math.max(0, travel.zones()));
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
