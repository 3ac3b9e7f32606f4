package peakproof.fact;

import org.jspecify.annotations.Nullable;

/** What can be counted of the runs of a window. */
final class RunCounts {
  private RunCounts() {}

  /** The count of that name; null when it is none of these. */
  static @Nullable Tally of(String name, Span span) {
    return switch (name) {
      case "longestRunMinutes" ->
          Tally.longest(span.runs, Run::minutes, "time of the runs")
              .orStatedSeconds(
                  span.statesLately() ? span.timeline.lately().longestRunSeconds() : null);
      case "longestRunKm" -> Tally.longest(span.runs, Run::km, "distance of the runs");
      case "racePaceRuns" ->
          Tally.count(span.runs, Run::atRacePace, "distance of the runs in the log");
      case "fastRuns" -> Tally.count(span.runs, Run::fast, "set lines of the runs in the log");
      case "steepestRunDescent" ->
          Tally.longest(
              span.runs, span.timeline.skills()::descentPerKm, "descent of the runs in the log");
      case "bricks" -> Tally.certain(span.bricks().size());
      case "offBikeShare" ->
          Tally.certain(span.runs.isEmpty() ? 0 : (double) span.bricks().size() / span.runs.size());
      default -> null;
    };
  }
}
