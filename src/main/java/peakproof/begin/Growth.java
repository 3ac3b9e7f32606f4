package peakproof.begin;

import java.util.ArrayList;
import java.util.List;

/** How an amount grows over the weeks from what was done lately to what is aimed at. */
final class Growth {
  /** Weeks whose best a new one is held against: within 30 days of it. */
  private static final int LOOK_BACK = 4;

  /** How much less the weeks before the biggest one have, each (common practice, no source). */
  private static final double STEP_BACK = 0.93;

  private Growth() {}

  /** Small amounts grow in small steps, or would not grow at all. */
  record Steps(double small, double until, double usual) {
    static final Steps MINUTES = new Steps(1, 100, 5);
    static final Steps METRES = new Steps(50, 1000, 100);
  }

  /**
   * Amounts by week.
   *
   * @param lately what was done in the weeks before the first
   * @param aim what the biggest week has
   * @param factor how much more one week may have than the best of the four before
   * @param steps what amounts are rounded down to
   */
  static List<Double> of(
      List<Double> sizes, double lately, double aim, double factor, Steps steps) {
    int biggest = lastFull(sizes);
    List<Double> amounts = new ArrayList<>();
    for (int i = 0; i < sizes.size(); i++) {
      double best = i < LOOK_BACK ? lately : 0;
      for (int j = Math.max(0, i - LOOK_BACK); j < i; j++) {
        best = Math.max(best, amounts.get(j));
      }
      double wanted = aim * Math.pow(STEP_BACK, Math.max(0, biggest - i));
      double usual = Math.max(wanted, Math.min(aim, lately));
      double full = Math.min(usual, best * factor);
      double size = sizes.get(i);
      amounts.add(down(size < 1 ? Math.min(full, Math.max(best, 1)) * size : full, steps));
    }
    return amounts;
  }

  private static int lastFull(List<Double> sizes) {
    int last = 0;
    for (int i = 0; i < sizes.size(); i++) {
      last = sizes.get(i) == 1 ? i : last;
    }
    return last;
  }

  private static double down(double amount, Steps steps) {
    double unit = amount < steps.until() ? steps.small() : steps.usual();
    return Math.floor(amount / unit + 1e-9) * unit;
  }
}
