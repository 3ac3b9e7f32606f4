package peakproof.fact;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What can be counted of the swims of a window. */
final class SwimCounts {
  private static final String WHERE = "where of the swims in the log";
  private static final String SETS = "set lines of the swims in the log";

  private SwimCounts() {}

  /** The count of that name; null when it is none of these. */
  static @Nullable Tally of(String name, Span span) {
    Skills skills = span.timeline.skills();
    return switch (name) {
      case "openWaterSwims" -> openWater(span, skills);
      case "suitlessSwims" -> Tally.count(span.swims, skills::suitless, WHERE);
      case "wetsuitSwims" ->
          Tally.count(span.swims, skills::wetsuit, "log kit of open-water swims");
      case "longestWetsuitSwimMinutes" ->
          Tally.longest(
              span.swims.stream().filter(Swim::wetsuit).toList(),
              Swim::minutes,
              "time of the swims");
      case "longestSwimMetres" ->
          Tally.longest(span.swims, Swim::continuousMetres, SETS)
              .orStated(span.statesLately() ? span.timeline.lately().longestSwimMetres() : null);
      case "longestRepetitionMetres" ->
          Tally.longest(span.swims, Swim::longestRepetitionMetres, SETS);
      case "goalPaceSwimMetres" -> Tally.longest(span.swims, Swim::goalPaceMetres, SETS);
      case "sightingSwims" -> skills.practised(span.swims, "sighting");
      case "bothSidesSwims" -> skills.practised(span.swims, "both-sides");
      case "fastStartSwims" -> skills.practised(span.swims, "fast-start");
      case "briskSwims" -> Tally.count(span.swims, Swim::brisk, Tally.BRISK);
      case "swimsInCompany" -> Tally.count(span.swims, skills::inCompany, "company of the swims");
      default -> null;
    };
  }

  private static Tally openWater(Span span, Skills skills) {
    Tally counted = Tally.count(span.swims, skills::openWater, WHERE);
    LocalDate stated = span.timeline.hasLately() ? span.timeline.lately().openWater() : null;
    return stated != null && span.holds(stated)
        ? new Tally(Math.max(counted.value(), 1), counted.doubt())
        : counted;
  }
}
