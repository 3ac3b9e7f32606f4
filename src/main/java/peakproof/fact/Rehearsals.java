package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.measure.Constants;
import peakproof.measure.DistanceClass;

/** What of the race has been rehearsed: its shoes, its fuel, the whole of it in small. */
record Rehearsals(RaceShoes shoes, Fuelling fuelling, DressRehearsal dress) {
  static Rehearsals of(
      Plan plan, List<Session> sessions, @Nullable DistanceClass distance, Constants constants) {
    return new Rehearsals(
        RaceShoes.of(plan, sessions),
        new Fuelling(plan, sessions, constants),
        new DressRehearsal(plan, sessions, distance, constants));
  }
}
