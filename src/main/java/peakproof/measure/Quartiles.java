package peakproof.measure;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The values below which lie a quarter, half and three quarters of some numbers.
 *
 * <p>Definition 7 of Hyndman and Fan, 1996, The American Statistician 50:361-365: linear between
 * the order statistics, the smallest being 0 and the largest 1.
 */
public record Quartiles(double first, double median, double third) {
  /** Null of nothing, and where a value is no finite number. */
  public static @Nullable Quartiles of(Collection<Double> values) {
    if (values.isEmpty() || !values.stream().allMatch(Double::isFinite)) {
      return null;
    }
    List<Double> sorted = values.stream().sorted().toList();
    return new Quartiles(at(sorted, 0.25), at(sorted, 0.5), at(sorted, 0.75));
  }

  private static double at(List<Double> sorted, double share) {
    double place = share * (sorted.size() - 1);
    int below = (int) Math.floor(place);
    double low = sorted.get(below);
    double high = sorted.get(Math.min(below + 1, sorted.size() - 1));
    double beyond = place - below;
    return low * (1 - beyond) + high * beyond;
  }
}
