package peakproof.fact;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What can be counted in a window, by name. Counting waits until a rule asks, as most ask for one
 * or two; for the facts of one plan, which one thread works out.
 */
final class Tallies {
  private final Map<String, Supplier<Tally>> counting = new HashMap<>();
  private final Map<String, Tally> counted = new HashMap<>();

  void put(String name, Supplier<Tally> tally) {
    counting.put(name, tally);
  }

  /** The count of that name; null when there is none. */
  @Nullable Tally get(String name) {
    Tally tally = counted.get(name);
    Supplier<Tally> missing = tally == null ? counting.get(name) : null;
    if (missing == null) {
      return tally;
    }
    tally = missing.get();
    counted.put(name, tally);
    return tally;
  }
}
