package peakproof.measure;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One run against the longest of the 30 days before it, in the classes of Frandsen 2025, BJSM
 * 59(17):1203: 5205 runners, self-reported overuse injuries, observational. The middle class was no
 * worse than the small one, so the classes are no slope.
 *
 * @param size null when it cannot be told
 * @param share how much longer than the longest, 0.15 for 15 %; null when unknown
 * @param longest the longest run known in the 30 days, metres; null without one
 * @param because why nothing can be told; empty when it can
 */
public record RunSpike(
    @Nullable Size size, @Nullable Double share, @Nullable Double longest, String because) {

  /** The classes of the paper. */
  public enum Size {
    /** At most 10 % longer. */
    NONE,
    /** More than 10 % and at most 30 % longer. */
    SMALL,
    /** More than 30 % and at most 100 % longer. */
    MODERATE,
    /** More than twice as long. */
    LARGE
  }

  /** A run before; null metres when its distance is unknown. */
  public record Run(LocalDate date, @Nullable Double metres) {}

  /**
   * Compares a run with those of the 30 days before its date, the thirtieth included; races count.
   * A run of unknown distance among them leaves the spike unknown unless what is known already
   * shows that there is none.
   */
  public static RunSpike of(LocalDate date, double metres, List<Run> others, Constants constants) {
    LocalDate first = date.minusDays((long) constants.of(Constant.SPIKE_DAYS));
    List<Run> before =
        others.stream()
            .filter(run -> run.date.isBefore(date) && !run.date.isBefore(first))
            .toList();
    boolean allKnown =
        before.stream().allMatch(run -> run.metres != null && Limit.countable(run.metres));
    double longest = 0;
    for (Run run : before) {
      Double known = run.metres;
      if (known != null && Limit.countable(known)) {
        longest = Math.max(longest, known);
      }
    }
    if (longest <= 0) {
      return without(
          allKnown
              ? "no run in the days before: a return, not a spike"
              : "the distance of the runs before");
    }
    double share = metres / longest - 1;
    if (!Double.isFinite(share) || !(metres >= 0)) {
      return without("the distance of the run itself");
    }
    Size size = size(share, constants);
    if (allKnown) {
      return new RunSpike(size, share, longest, "");
    }
    return size == Size.NONE
        ? new RunSpike(Size.NONE, null, longest, "")
        : without("the distance of every run of the days before");
  }

  private static Size size(double share, Constants constants) {
    if (Limit.above(share, constants.of(Constant.SPIKE_LARGE))) {
      return Size.LARGE;
    }
    if (Limit.above(share, constants.of(Constant.SPIKE_MODERATE))) {
      return Size.MODERATE;
    }
    return Limit.above(share, constants.of(Constant.SPIKE_SMALL)) ? Size.SMALL : Size.NONE;
  }

  private static RunSpike without(String because) {
    return new RunSpike(null, null, null, because);
  }
}
