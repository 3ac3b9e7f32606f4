package peakproof.measure;

import org.jspecify.annotations.Nullable;

/**
 * A number worked out, or unknown with the reason.
 *
 * @param value finite, or null when unknown; its unit is said where the amount is
 * @param because why there is none, in plain words; empty when there is one
 */
public record Amount(@Nullable Double value, String because) {
  static final String BEYOND = "the numbers are too large or too small to work with";

  /** Refuses numbers that are none. */
  public Amount {
    if (value != null && !Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite number");
    }
  }

  /** Known when the number is finite: sums of absurd inputs may not be. */
  static Amount of(double value) {
    return Double.isFinite(value) ? new Amount(value, "") : unknown(BEYOND);
  }

  static Amount unknown(String because) {
    return new Amount(null, because);
  }

  /** The number when it is finite, else null. */
  static @Nullable Double finite(double value) {
    return Double.isFinite(value) ? (Double) value : null;
  }

  /** True when there is a value. */
  public boolean known() {
    return value != null;
  }
}
