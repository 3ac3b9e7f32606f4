package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A number with where it came from, or unknown with what would settle it.
 *
 * @param value finite, or null when unknown; its unit is said where the reading is
 * @param origin where it came from
 * @param entries JSON pointers of the entries it rests on; empty when unknown
 * @param because the entry that would settle it, in plain words; empty when known
 */
public record Reading(@Nullable Double value, Origin origin, List<String> entries, String because) {

  /** Where a number came from. */
  public enum Origin {
    /** A test, a race or the log. */
    TESTED,
    /** The coach's own figure. */
    STATED,
    /** The goal: what is hoped for, not what was shown. */
    GOAL,
    /** Nowhere. */
    UNKNOWN
  }

  /** Keeps the entries unchangeable and refuses numbers that are none. */
  public Reading {
    entries = List.copyOf(entries);
    if (value != null && !Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite number");
    }
  }

  /** Known when the number is finite: readings of absurd entries may not be. */
  static Reading of(double value, Origin origin, List<String> entries) {
    return Double.isFinite(value)
        ? new Reading(value, origin, entries, "")
        : unknown(Amount.BEYOND);
  }

  /** What was worked out, or unknown for its reason. */
  static Reading of(Amount amount, Origin origin, List<String> entries) {
    Double value = amount.value();
    return value == null ? unknown(amount.because()) : of(value, origin, entries);
  }

  static Reading unknown(String because) {
    return new Reading(null, Origin.UNKNOWN, List.of(), because);
  }

  /** True when there is a value. */
  public boolean known() {
    return value != null;
  }

  /** True when it was shown in a test, a race or the log. */
  public boolean tested() {
    return origin == Origin.TESTED;
  }
}
