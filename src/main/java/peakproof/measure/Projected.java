package peakproof.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A time to be expected, as a range, or unknown.
 *
 * @param range null when unknown
 * @param entries JSON pointers of the entries it rests on
 * @param because what would settle it; empty when known
 */
public record Projected(@Nullable Range range, List<String> entries, String because) {

  /** Seconds: at the fast end, likely, at the slow end. */
  public record Range(double low, double likely, double high) {
    Range plus(Range other) {
      return new Range(low + other.low, likely + other.likely, high + other.high);
    }

    Range times(double factor) {
      return new Range(factor * low, factor * likely, factor * high);
    }
  }

  static Projected known(Range range, List<String> entries) {
    return new Projected(range, List.copyOf(entries), "");
  }

  static Projected unknown(String because) {
    return new Projected(null, List.of(), because);
  }

  /** This, and the other after it; unknown when either is. */
  Projected then(Projected other) {
    if (range == null) {
      return this;
    }
    if (other.range == null) {
      return other;
    }
    List<String> both = new ArrayList<>(entries);
    both.addAll(other.entries);
    return known(range.plus(other.range), both);
  }

  /** Half of it. */
  Projected half() {
    return range == null ? this : known(range.times(0.5), entries);
  }
}
