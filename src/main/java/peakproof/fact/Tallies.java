package peakproof.fact;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What can be counted in a span, by the names that windows give it. Counting waits until a rule
 * asks, as most ask for one or two; for the facts of one plan, which one thread works out.
 */
final class Tallies {
  private final Span span;
  private final Map<String, @Nullable Tally> counted = new HashMap<>();

  Tallies(Span span) {
    this.span = span;
  }

  Span span() {
    return span;
  }

  /** The count of that name; null when there is none. */
  @Nullable Tally get(String name) {
    return counted.computeIfAbsent(name, this::count);
  }

  private @Nullable Tally count(String name) {
    Tally tally = SwimCounts.of(name, span);
    tally = tally == null ? RideCounts.of(name, span) : tally;
    tally = tally == null ? RunCounts.of(name, span) : tally;
    return tally == null ? RehearsalCounts.of(name, span) : tally;
  }
}
