package peakproof.measure;

import org.jspecify.annotations.Nullable;

/**
 * A span of amounts, both ends included, or unknown with the reason.
 *
 * @param from the lower end, finite; null when unknown
 * @param to the upper end, finite; null when unknown
 * @param because why there is none; empty when there is one
 */
public record Band(@Nullable Double from, @Nullable Double to, String because) {

  static Band of(double from, double to) {
    return Double.isFinite(from) && Double.isFinite(to)
        ? new Band(from, to, "")
        : unknown("the numbers are too large to work with");
  }

  static Band unknown(String because) {
    return new Band(null, null, because);
  }
}
