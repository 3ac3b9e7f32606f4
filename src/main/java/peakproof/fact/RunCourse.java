package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;

/**
 * The run course of the race.
 *
 * @param descentPerKm metres it goes down for each kilometre; unknown when either is not given
 */
public record RunCourse(@Nullable Double descentPerKm) implements Fact {
  static RunCourse of(Event event) {
    Double descent = event.run().descent();
    Double metres = event.legs().run();
    return new RunCourse(
        descent == null || metres == null || metres <= 0
            ? null
            : (Double) Exact.of(1000 * descent / metres));
  }

  @Override
  public List<Where> where() {
    return List.of(new Where("/event/run", null, null));
  }
}
