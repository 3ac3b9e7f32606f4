package peakproof.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * How the daily volume falls over a taper. Progressive cuts did at least as well as steps (Bosquet
 * 2007; Banister, Carter and Zarkadas 1999: a time constant of 4 days beat one of 8).
 */
public sealed interface TaperShape {

  /** All days cut by one share, 0.5 for half. */
  record Step(double cut) implements TaperShape {}

  /** Cut a little more each day, by this share on the last. */
  record Linear(double cut) implements TaperShape {}

  /** Fallen to 37 % after so many days, and so on. */
  record Exponential(double timeConstant) implements TaperShape {}

  /** The volume of a day, 1 to {@code days}, as a share of the volume before the taper. */
  private double share(int day, int days) {
    if (this instanceof Step step) {
      return 1 - step.cut;
    }
    if (this instanceof Linear linear) {
      return 1 - linear.cut * day / days;
    }
    return Math.exp(-day / ((Exponential) this).timeConstant);
  }

  private boolean sound() {
    if (this instanceof Exponential exponential) {
      return Limit.positive(exponential.timeConstant);
    }
    return Limit.within(this instanceof Step step ? step.cut : ((Linear) this).cut, 0, 1);
  }

  /**
   * The volume of every day of a taper, from the first to the last before the race; empty for a cut
   * outside 0 to 1, a time constant or a volume that is not above zero, or no day.
   *
   * @param base daily volume before the taper, in any unit
   */
  default List<Double> volumes(double base, int days) {
    List<Double> volumes = new ArrayList<>();
    if (sound() && Limit.positive(base)) {
      for (int day = 1; day <= days; day++) {
        volumes.add(base * Math.max(0, Math.min(1, share(day, days))));
      }
    }
    return List.copyOf(volumes);
  }
}
