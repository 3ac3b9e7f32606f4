package peakproof.fact;

import java.util.List;
import java.util.stream.Stream;
import peakproof.measure.CutOffMargin;
import peakproof.measure.Forecast;
import peakproof.measure.Projected;

/**
 * A time limit of the race against the projection.
 *
 * @param name swim, bike or finish
 * @param limitMinutes the limit from the start
 * @param likelyMinutes the likely projection
 * @param fastMinutes the fast end of the projection
 * @param marginShare what is left of the limit by the likely projection; negative when it is missed
 */
public record CutOff(
    String name, double limitMinutes, double likelyMinutes, double fastMinutes, double marginShare)
    implements Fact {

  /** True when even the fast end of the projection misses the limit. */
  public boolean missedAtBest() {
    return fastMinutes > limitMinutes;
  }

  static List<CutOff> all(Forecast forecast) {
    return forecast.cutOffs().stream().flatMap(CutOff::of).toList();
  }

  private static Stream<CutOff> of(Forecast.CutOff limit) {
    Projected.Range range = limit.reached().range();
    Double margin =
        range == null ? null : CutOffMargin.of(limit.limit(), range.likely()).share().value();
    return range == null || margin == null
        ? Stream.empty()
        : Stream.of(
            new CutOff(
                limit.name(),
                limit.limit() / 60,
                range.likely() / 60,
                range.low() / 60,
                Exact.of(margin.doubleValue())));
  }

  @Override
  public List<Where> where() {
    return List.of(new Where("/event/cut-offs/" + name, null, null));
  }
}
