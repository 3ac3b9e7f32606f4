package peakproof.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Amounts day by day, oldest first, null for unknown days. */
final class Days {
  static final String TOO_FEW = "not enough recorded days to judge";

  private Days() {}

  /** True when every known day holds a number from zero. */
  static boolean sound(List<@Nullable Double> days) {
    return known(days).stream().allMatch(Limit::countable);
  }

  /** The known ones. */
  static List<Double> known(List<@Nullable Double> days) {
    List<Double> known = new ArrayList<>();
    for (Double day : days) {
      if (day != null) {
        known.add(day);
      }
    }
    return known;
  }

  /** The last days of a list, or all of it when it holds fewer. */
  static List<@Nullable Double> last(List<@Nullable Double> days, int most) {
    return days.subList(Math.max(0, days.size() - most), days.size());
  }

  /** The mean of the known ones; null without any. */
  static @Nullable Double mean(List<@Nullable Double> days) {
    List<Double> known = known(days);
    return known.isEmpty()
        ? null
        : (Double) known.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  /** All together; null when one is unknown. */
  static @Nullable Double total(List<@Nullable Double> days) {
    return days.stream().allMatch(Objects::nonNull)
        ? (Double) known(days).stream().mapToDouble(Double::doubleValue).sum()
        : null;
  }
}
