package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something in the plan that cannot be as written.
 *
 * @param label what it is, in a few words with the numbers
 * @param minutesOff by how much the coach's own sum is off; null for all other mistakes
 */
public record PlanMistake(String label, @Nullable Double minutesOff, Where entry) implements Fact {
  /** True when there is no tolerance to ask about. */
  public boolean certain() {
    return minutesOff == null;
  }

  @Override
  public List<Where> where() {
    return List.of(entry);
  }
}
