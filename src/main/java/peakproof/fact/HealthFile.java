package peakproof.fact;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import peakproof.document.Athlete;

/**
 * What the plan's health entries say beside injuries.
 *
 * @param checked true with a date of a medical check, or of a clearance by a licensed practitioner
 * @param contact true with a word on whom to reach
 * @param risks declared conditions of heart, blood pressure or sugar, in words: none without
 */
@OfHealth
public record HealthFile(String pointer, boolean checked, boolean contact, String risks)
    implements Fact {
  private static final Set<String> RISKS = Set.of("heart", "high-blood-pressure", "diabetes");
  private static final String NO_RISK = "none";

  static HealthFile of(Athlete athlete) {
    Athlete.Health health = athlete.health();
    String risks =
        health.conditions().stream()
            .filter(RISKS::contains)
            .sorted()
            .map(condition -> condition.replace('-', ' '))
            .collect(Collectors.joining(", "));
    return new HealthFile(
        athlete.at(),
        health.checked() != null || health.cleared() != null,
        health.contact() != null,
        risks.isEmpty() ? NO_RISK : risks);
  }

  /** True with such a condition. */
  public boolean risk() {
    return !risks.equals(NO_RISK);
  }

  /** True without a word on whom to reach and without a medical note. */
  public boolean nobodyToReach() {
    return !contact && !checked;
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
