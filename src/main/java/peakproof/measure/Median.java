package peakproof.measure;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The middle value. */
public final class Median {
  private Median() {}

  /**
   * The median, the mean of the two middle ones for an even count. Null of nothing, and where a
   * value is no finite number.
   */
  public static @Nullable Double of(Collection<Double> values) {
    if (values.isEmpty() || !values.stream().allMatch(Double::isFinite)) {
      return null;
    }
    List<Double> sorted = values.stream().sorted().toList();
    int middle = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(middle)
        : sorted.get(middle - 1) / 2 + sorted.get(middle) / 2;
  }
}
