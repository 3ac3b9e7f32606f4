package peakproof.fact;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;

/**
 * Caffeine planned for the race.
 *
 * @param milligrams in all
 * @param perKg milligrams for each kilogram of the athlete; unknown without the mass
 * @param age of the athlete on race day; unknown without a year of birth
 * @param untried true when the plan lists caffeine as new on the day
 */
public record Caffeine(
    String pointer,
    double milligrams,
    @Nullable Double perKg,
    @Nullable Double age,
    boolean untried)
    implements Fact {

  /** Null when none is planned. */
  static @Nullable Caffeine of(Plan plan, @Nullable Double age) {
    Plan.RaceDay day = plan.raceDay();
    Double milligrams = day == null ? null : day.caffeine();
    if (day == null || milligrams == null || milligrams <= 0) {
      return null;
    }
    Double mass = plan.athlete().massKg();
    return new Caffeine(
        day.at() + "/caffeine",
        milligrams,
        mass == null ? null : (Double) Exact.of(milligrams / mass),
        age,
        day.firstUse().stream()
            .anyMatch(item -> item.toLowerCase(Locale.ROOT).contains("caffeine")));
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
