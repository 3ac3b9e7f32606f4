package peakproof.begin;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** The weeks of a skeleton: which are big, which are lighter, and how far the taper cuts. */
final class Frame {
  private Frame() {}

  /**
   * One week.
   *
   * @param toRace weeks to race week, which has 0
   * @param size share of the hours a full week would have
   * @param longSize share of the longest sessions a full week would have
   */
  record Week(
      LocalDate starts, Focus focus, int toRace, double size, double longSize, Trial trial) {}

  /** What a week tries out besides. */
  enum Trial {
    NOTHING,
    /** The swim goal, while it can still be moved. */
    GOAL_PACE,
    /** The race in small, when nothing is left to try but time to mend what did not work. */
    REHEARSAL
  }

  /** What a week is for, as the documents have it. */
  enum Focus {
    BUILD,
    LIGHTER,
    PEAK,
    TAPER
  }

  /** The Monday of the week that holds a day. */
  static LocalDate monday(LocalDate day) {
    return day.minusDays(day.getDayOfWeek().getValue() - 1L);
  }

  static List<Week> of(Brief brief, int peakWeeks, int taperWeeks) {
    int count = (int) ChronoUnit.WEEKS.between(brief.begins(), monday(brief.race())) + 1;
    int cycle = (int) brief.house().of("block-structure", "build-weeks");
    List<Week> weeks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      weeks.add(week(brief.begins().plusWeeks(i), count - 1 - i, peakWeeks, taperWeeks, cycle));
    }
    return weeks;
  }

  /**
   * Sizes: common practice, no source; the taper's lie in the band of 41 to 60 % less volume with
   * the sharpness kept (Bosquet et al. 2007, from memory).
   */
  private static Week week(LocalDate starts, int toRace, int peaks, int tapers, int cycle) {
    if (toRace < tapers) {
      double[] size = {0.40, 0.60, 0.75, 0.85};
      double[] longSize = {0.30, 0.50, 0.65, 0.75};
      int step = Math.min(toRace, size.length - 1);
      return new Week(starts, Focus.TAPER, toRace, size[step], longSize[step], Trial.NOTHING);
    }
    int beforeTaper = toRace - tapers;
    if (beforeTaper < peaks) {
      if (beforeTaper == 0) {
        boolean only = peaks == 1;
        return new Week(
            starts, Focus.PEAK, toRace, only ? 1 : 0.95, only ? 1 : 0.8, Trial.REHEARSAL);
      }
      Trial trial = beforeTaper == 1 ? Trial.GOAL_PACE : Trial.NOTHING;
      return new Week(starts, Focus.PEAK, toRace, 1, 1, trial);
    }
    boolean lighter = cycle > 1 && (beforeTaper - peaks) % cycle == 0;
    return lighter
        ? new Week(starts, Focus.LIGHTER, toRace, 0.7, 0.7, Trial.NOTHING)
        : new Week(starts, Focus.BUILD, toRace, 1, 1, Trial.NOTHING);
  }
}
