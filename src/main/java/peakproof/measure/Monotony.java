package peakproof.measure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Load, monotony and strain of a week, Foster 1998, Med Sci Sports Exerc 30:1164: illness came when
 * athletes passed thresholds of their own, so there is no universal one, and a low monotony is
 * never worth a word. Rest days count as zero. With two sessions daily the whole looks monotonous
 * though each sport varies: look at each sport too.
 *
 * @param total load of the week, arbitrary units; unknown when a day is
 * @param deviation of the known days; the paper does not say which kind: of a sample (n − 1) unless
 *     the club sets {@code monotony-less} to 0
 * @param monotony mean over deviation; undefined of equal days
 * @param strain total times monotony
 * @param coverage known days of the seven
 */
public record Monotony(
    Amount total, Amount deviation, Amount monotony, Amount strain, Coverage coverage) {
  private static final int WEEK = 7;

  /** Relative size below which a deviation is only the rounding of equal days. */
  private static final double ROUNDING = 1e-12;

  /** Of seven days in a row, null for unknown ones. */
  public static Monotony of(List<@Nullable Double> days, Constants constants) {
    Coverage coverage = Coverage.of(days);
    if (days.size() != WEEK || !Days.sound(days)) {
      return unknown("the loads of seven days", coverage);
    }
    Double mean = Days.mean(days);
    if (mean == null || coverage.judged(constants) == Coverage.Judgement.SUPPRESSED) {
      return unknown(Days.TOO_FEW, coverage);
    }
    Double sum = Days.total(days);
    Amount total = sum == null ? Amount.unknown("the load of every day") : Amount.of(sum);
    Amount deviation = deviation(Days.known(days), mean, constants);
    Double apart = deviation.value();
    if (apart == null) {
      return new Monotony(total, deviation, deviation, deviation, coverage);
    }
    if (apart <= ROUNDING * mean) {
      Amount undefined = Amount.unknown("every day identical");
      return new Monotony(total, deviation, undefined, undefined, coverage);
    }
    Amount strain = sum == null ? total : Amount.of(sum * (mean / apart));
    return new Monotony(total, deviation, Amount.of(mean / apart), strain, coverage);
  }

  /** Of all sports together, each given as seven days; a day unknown in one is unknown. */
  public static Monotony overall(Collection<List<@Nullable Double>> sports, Constants constants) {
    List<@Nullable Double> days = new ArrayList<>();
    for (int i = 0; i < WEEK; i++) {
      int day = i;
      List<@Nullable Double> each = new ArrayList<>();
      sports.forEach(sport -> each.add(day < sport.size() ? sport.get(day) : null));
      days.add(Days.total(each));
    }
    return of(days, constants);
  }

  /** The monotony for display, at most 10. */
  public Amount shown(Constants constants) {
    Double value = monotony.value();
    return value == null
        ? monotony
        : Amount.of(Math.min(value, constants.of(Constant.MONOTONY_SHOWN_MOST)));
  }

  private static Amount deviation(List<Double> known, double mean, Constants constants) {
    double sum = 0;
    for (double day : known) {
      sum += (day - mean) * (day - mean);
    }
    return Amount.of(Math.sqrt(sum / (known.size() - constants.of(Constant.MONOTONY_LESS))));
  }

  private static Monotony unknown(String because, Coverage coverage) {
    Amount unknown = Amount.unknown(because);
    return new Monotony(unknown, unknown, unknown, unknown, coverage);
  }
}
