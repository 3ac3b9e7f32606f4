package peakproof.measure;

import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Where a function that crosses zero once, upwards, does so: bisection between two brackets. */
final class RisingRoot {
  /** Enough to halve any bracket of doubles down to two neighbours. */
  private static final int HALVINGS = 200;

  private RisingRoot() {}

  /** Null when the function is above zero at the lower bracket or below it at the upper. */
  static @Nullable Double between(double from, double to, DoubleUnaryOperator function) {
    double low = from;
    double high = to;
    if (!(function.applyAsDouble(low) <= 0 && function.applyAsDouble(high) >= 0)) {
      return null;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = low + (high - low) / 2;
      if (function.applyAsDouble(middle) <= 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
