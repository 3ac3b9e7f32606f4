package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How unusual the last week is beside the last four: a description and nothing more. Its chronic
 * half can be replaced by random numbers without loss (Impellizzeri 2020, doi
 * 10.1007/s40279-020-01378-6) and in 5205 runners it did not go with injuries (Frandsen 2025), so
 * that it says nothing of injury. In a taper a low ratio is meant, and none is given.
 *
 * @param coupled mean of the last 7 days over that of the last 28
 * @param uncoupled mean of the last 7 days over that of the 21 before them
 * @param weighted the same of exponentially weighted means (Williams 2017, doi
 *     10.1136/bjsports-2016-096589)
 * @param acute exponentially weighted mean of the shorter kind, arbitrary units a day
 * @param chronic exponentially weighted mean of the longer kind
 */
public record LoadRatio(
    Amount coupled, Amount uncoupled, Amount weighted, Amount acute, Amount chronic) {

  /** The two running means. */
  private record Weighted(double acute, double chronic) {}

  /**
   * Of one kind of load day by day, oldest first, null for unknown days. Unknown with fewer than 28
   * days, with an unknown one among the last 7 or more than 4 among the last 28. An unknown day
   * leaves the running means as they are.
   *
   * @param taper true when the days reach into the taper
   */
  public static LoadRatio of(List<@Nullable Double> days, boolean taper, Constants constants) {
    int acuteDays = (int) constants.of(Constant.RATIO_ACUTE_DAYS);
    int chronicDays = (int) constants.of(Constant.RATIO_CHRONIC_DAYS);
    if (taper) {
      return unknown("nothing: in a taper a low ratio is meant");
    }
    if (days.size() < chronicDays || !Days.sound(days)) {
      return unknown("the loads of " + chronicDays + " days");
    }
    List<@Nullable Double> chronic = Days.last(days, chronicDays);
    List<@Nullable Double> acute = Days.last(days, acuteDays);
    Coverage coverage = Coverage.of(chronic);
    if (Days.total(acute) == null
        || coverage.days() - coverage.known() > constants.of(Constant.RATIO_UNKNOWN_MOST)) {
      return unknown(Days.TOO_FEW);
    }
    Double last = Days.mean(acute);
    List<@Nullable Double> before = chronic.subList(0, chronicDays - acute.size());
    Weighted weighted = weighted(days, acuteDays, chronicDays);
    return new LoadRatio(
        ratio(last, Days.mean(chronic)),
        ratio(last, Days.mean(before)),
        ratio(weighted.acute, weighted.chronic),
        Amount.of(weighted.acute),
        Amount.of(weighted.chronic));
  }

  private static Weighted weighted(List<@Nullable Double> days, int acuteDays, int chronicDays) {
    List<Double> known = Days.known(days);
    double acute = known.get(0);
    double chronic = acute;
    for (double load : known.subList(1, known.size())) {
      acute += share(acuteDays) * (load - acute);
      chronic += share(chronicDays) * (load - chronic);
    }
    return new Weighted(acute, chronic);
  }

  private static double share(int days) {
    return 2.0 / (days + 1);
  }

  private static Amount ratio(@Nullable Double last, @Nullable Double usual) {
    return last == null || usual == null || !Limit.above(usual, 0)
        ? Amount.unknown("training in the weeks before")
        : Amount.of(last / usual);
  }

  private static LoadRatio unknown(String because) {
    Amount unknown = Amount.unknown(because);
    return new LoadRatio(unknown, unknown, unknown, unknown, unknown);
  }
}
