package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How many days of a window are known. A day without an entry is unknown and no rest.
 *
 * @param known days
 * @param days of the window
 */
public record Coverage(int known, int days) {

  /** What may be said of a window. */
  public enum Judgement {
    /** From 85 % on. */
    SHOWN,
    /** From 70 % on: with a reservation. */
    RESERVED,
    /** Not enough recorded days to judge. */
    SUPPRESSED
  }

  /** Of the days of a window, null for unknown ones. */
  static Coverage of(List<@Nullable Double> days) {
    int known = 0;
    for (Double day : days) {
      known += day == null ? 0 : 1;
    }
    return new Coverage(known, days.size());
  }

  /** Known days as a share of all, 0 to 1; zero of an empty window. */
  public double share() {
    return days <= 0 ? 0 : (double) known / days;
  }

  /** True when so many days are known that something may be said; false of an empty window. */
  public boolean enough(Constants constants) {
    return !Limit.below(share(), constants.of(Constant.COVERAGE_LEAST));
  }

  /** What may be said. */
  public Judgement judged(Constants constants) {
    if (!enough(constants)) {
      return Judgement.SUPPRESSED;
    }
    return Limit.below(share(), constants.of(Constant.COVERAGE_SHOWN))
        ? Judgement.RESERVED
        : Judgement.SHOWN;
  }
}
