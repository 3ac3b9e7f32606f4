package peakproof.fact;

import java.util.List;
import peakproof.measure.CutOffMargin;

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
    return CutOffMargin.share(limitMinutes, likelyMinutes);
  }

  /** True when even the fast end of the projection misses the limit. */
  public boolean missedAtBest() {
    return CutOffMargin.share(limitMinutes, fastMinutes) < 0;
  }

  @Override
  public List<Where> where() {
    return List.of(new Where("/event/cut-offs/" + name, null, null));
  }
}
