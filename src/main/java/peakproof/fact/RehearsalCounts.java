package peakproof.fact;

import org.jspecify.annotations.Nullable;

/**
 * What of race day is rehearsed in a window: shoes, food, kit, changes of sport, heat. Of a span of
 * which no log tells anything, nothing can be called missing.
 */
final class RehearsalCounts {
  private RehearsalCounts() {}

  /** The count of that name; null when it is none of these. */
  static @Nullable Tally of(String name, Span span) {
    if (name.equals("heatDays")) {
      return Tally.count(
          span.days,
          day -> day.heat(span.timeline.raceAir()),
          "heat or air of the rides and runs in the log");
    }
    Tally counted = rehearsed(name, span);
    return counted != null && span.unlogged()
        ? new Tally(counted.value(), span.logOfAllDays())
        : counted;
  }

  private static @Nullable Tally rehearsed(String name, Span span) {
    Rehearsals rehearsals = span.timeline.rehearsals();
    return switch (name) {
      case "raceShoeRuns" -> rehearsals.shoes().runs(span.runs);
      case "raceShoeKm" -> rehearsals.shoes().km(span.runs);
      case "fuelledLongSessions" -> rehearsals.fuelling().longSessions(span.sessions);
      case "fuelledRuns" -> rehearsals.fuelling().runs(span.runs);
      case "dressRehearsals" -> rehearsals.dress().on(span.days);
      case "transitionSessions" -> span.timeline.skills().transitions(span.sessions);
      default -> null;
    };
  }
}
