package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import peakproof.measure.DistanceClass;

/** A race as small as a test of the rule pipeline needs it. */
public record Meet(LocalDate date, DistanceClass distance, boolean openWater) implements Fact {
  @Override
  public List<Where> where() {
    return List.of(new Where("/event", date, null));
  }
}
