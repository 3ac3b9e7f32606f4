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
 * @param arithmetic how it was worked out, a line a step; empty when unknown
 * @param narrowing what would narrow it; null where nothing the documents can hold would
 */
public record Projected(
    @Nullable Range range,
    List<String> entries,
    String because,
    List<String> arithmetic,
    @Nullable Narrowing narrowing) {

  /** Seconds: at the fast end, likely, at the slow end. */
  public record Range(double low, double likely, double high) {
    /** From the fast end to the slow end, seconds. */
    double width() {
      return high - low;
    }

    private boolean finite() {
      return Double.isFinite(low) && Double.isFinite(likely) && Double.isFinite(high);
    }

    Range plus(Range other) {
      return new Range(low + other.low, likely + other.likely, high + other.high);
    }

    Range times(double factor) {
      return new Range(factor * low, factor * likely, factor * high);
    }
  }

  /**
   * An entry that would narrow a range.
   *
   * @param entry in the coach's words
   * @param seconds by which from fast to slow end would come closer together
   */
  public record Narrowing(String entry, double seconds) {}

  /** Known when all three times are finite: those of absurd entries may not be. */
  static Projected of(Range range, List<String> entries, List<String> arithmetic) {
    return range.finite()
        ? new Projected(range, List.copyOf(entries), "", List.copyOf(arithmetic), null)
        : unknown(Amount.BEYOND);
  }

  static Projected unknown(String because) {
    return new Projected(null, List.of(), because, List.of(), null);
  }

  /** The same, narrower by so many seconds once an entry is there. */
  Projected narrowedBy(String entry, double seconds) {
    if (range == null || !Double.isFinite(seconds)) {
      return this;
    }
    return new Projected(range, entries, because, arithmetic, new Narrowing(entry, seconds));
  }

  /** The same with one more line on how it was worked out. */
  Projected noting(String line) {
    if (range == null) {
      return this;
    }
    List<String> lines = new ArrayList<>(arithmetic);
    lines.add(line);
    return new Projected(range, entries, because, List.copyOf(lines), narrowing);
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
    return of(range.plus(other.range), both, List.of());
  }

  /** Half of it. */
  Projected half() {
    return range == null ? this : of(range.times(0.5), entries, List.of());
  }
}
