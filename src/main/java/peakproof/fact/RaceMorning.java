package peakproof.fact;

import java.util.List;
import peakproof.document.Plan;

/**
 * What is planned between arriving at the water and the start.
 *
 * @param warmUp true with a word on the warm-up
 */
public record RaceMorning(String pointer, boolean warmUp) implements Fact {
  static RaceMorning of(Plan plan) {
    Plan.RaceDay day = plan.raceDay();
    return day == null
        ? new RaceMorning(plan.at(), false)
        : new RaceMorning(day.at(), day.warmUp() != null);
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
