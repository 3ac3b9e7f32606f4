package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;

/**
 * What would be new on race day, kit or food. A piece of kit that a session before the race lists
 * is not new on the day.
 *
 * @param items in words
 */
public record FirstUse(String pointer, String items) implements Fact {

  /** Null when nothing would be new. */
  static @Nullable FirstUse of(Plan plan, Timeline timeline) {
    Plan.RaceDay day = plan.raceDay();
    if (day == null) {
      return null;
    }
    List<String> items =
        day.firstUse().stream()
            .filter(item -> timeline.sessions().noneMatch(each -> each.kit().contains(item)))
            .toList();
    return items.isEmpty() ? null : new FirstUse(day.at() + "/first-use", String.join(", ", items));
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
