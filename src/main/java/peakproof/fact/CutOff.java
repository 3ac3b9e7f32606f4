package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Log;
import peakproof.document.Plan;
import peakproof.measure.Calibration;
import peakproof.measure.Constants;
import peakproof.measure.CutOffMargin;
import peakproof.measure.Projected;
import peakproof.measure.RaceProjection;

/**
 * A time limit of the race against the projection.
 *
 * @param name swim, bike or finish
 * @param limitMinutes the limit from the start
 * @param likelyMinutes the likely projection
 * @param fastMinutes the fast end of the projection
 */
public record CutOff(String name, double limitMinutes, double likelyMinutes, double fastMinutes)
    implements Fact {

  /** What is left of the limit by the likely projection, as a share; negative when it is missed. */
  public double marginShare() {
    return Exact.of(CutOffMargin.of(limitMinutes, likelyMinutes).share());
  }

  /** True when even the fast end of the projection misses the limit. */
  public boolean missedAtBest() {
    return fastMinutes > limitMinutes;
  }

  static List<CutOff> all(
      Plan plan, @Nullable Log log, LocalDate asOf, Calibration calibration, Constants constants) {
    Event.CutOffs limits = plan.event().cutOffs();
    RaceProjection projection = RaceProjection.of(plan, log, asOf, calibration, constants);
    return Stream.of(
            of("swim", limits.swim(), projection.swim()),
            of("bike", limits.bike(), projection.bikeEnd()),
            of("finish", limits.finish(), projection.finish()))
        .filter(Objects::nonNull)
        .toList();
  }

  private static @Nullable CutOff of(String name, @Nullable Double limit, Projected projected) {
    Projected.Range range = projected.range();
    return limit == null || range == null
        ? null
        : new CutOff(name, limit / 60, range.likely() / 60, range.low() / 60);
  }

  @Override
  public List<Where> where() {
    return List.of(new Where("/event/cut-offs/" + name, null, null));
  }
}
