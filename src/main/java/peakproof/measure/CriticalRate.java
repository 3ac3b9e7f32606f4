package peakproof.measure;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Critical power and the work above it, or critical running speed and the distance above it, from
 * exhaustive trials of about 2 to 15 min (Monod and Scherrer 1965, Ergonomics 8:329, from memory;
 * methods: Muniz-Pumares 2019, doi 10.1519/JSC.0000000000002977). Two straight lines that differ on
 * noisy data are kept side by side. Neither says anything of efforts of hours.
 *
 * @param workTime least squares of work (or distance) on time; null when there is none
 * @param inverseTime least squares of power (or speed) on one over time; null when there is none
 * @param spread how far apart the two critical rates lie, as a share of their mean; null when there
 *     are none
 * @param reservations what speaks against relying on it
 * @param because why there is no fit; empty when there is one
 */
public record CriticalRate(
    @Nullable Fit workTime,
    @Nullable Fit inverseTime,
    @Nullable Double spread,
    List<String> reservations,
    String because) {

  /** A trial held to exhaustion, at watts or at metres a second. */
  public record Trial(LocalDate date, double rate, double seconds) {}

  /**
   * One of the two lines.
   *
   * @param critical watts, or metres a second
   * @param reserve joules, or metres
   */
  public record Fit(double critical, double reserve) {

    /** Seconds to exhaustion; unknown at the critical rate and below, where the line says none. */
    public Amount secondsAt(double rate) {
      return Limit.above(rate, critical)
          ? Amount.of(reserve / (rate - critical))
          : Amount.unknown("an effort above the critical one");
    }

    /** The rate that so many seconds exhaust. */
    public Amount rateFor(double seconds) {
      return Limit.positive(seconds)
          ? Amount.of(critical + reserve / seconds)
          : Amount.unknown("a time above zero");
    }
  }

  /**
   * Fits trials of 90 s to 20 min; others are left out. Unknown of fewer than two durations, and
   * when a longer trial was held at no less than a shorter one or did no more work.
   */
  public static CriticalRate of(List<Trial> trials, Constants constants) {
    List<Trial> used =
        trials.stream()
            .filter(trial -> counts(trial, constants))
            .sorted(Comparator.comparingDouble(Trial::seconds))
            .toList();
    if (used.stream().map(Trial::seconds).distinct().count() < 2) {
      return unknown("two exhaustive trials of different duration are needed");
    }
    if (!ordered(used)) {
      return unknown("a longer trial does not fit the shorter: ill paced, or not to exhaustion");
    }
    Fit workTime = workTime(used);
    Fit inverseTime = inverseTime(used);
    if (workTime == null || inverseTime == null) {
      return unknown("the trials do not lie on a line");
    }
    double mean = (workTime.critical + inverseTime.critical) / 2;
    double spread = Math.abs(workTime.critical - inverseTime.critical) / mean;
    return new CriticalRate(
        workTime, inverseTime, spread, reservations(used, spread, constants), "");
  }

  private static boolean counts(Trial trial, Constants constants) {
    return Limit.positive(trial.rate)
        && Limit.within(
            trial.seconds,
            constants.of(Constant.CRITICAL_TRIAL_SHORTEST),
            constants.of(Constant.CRITICAL_TRIAL_LONGEST));
  }

  private static boolean ordered(List<Trial> trials) {
    for (Trial shorter : trials) {
      for (Trial longer : trials) {
        if (longer.seconds > shorter.seconds
            && (longer.rate >= shorter.rate
                || longer.rate * longer.seconds <= shorter.rate * shorter.seconds)) {
          return false;
        }
      }
    }
    return true;
  }

  private static @Nullable Fit workTime(List<Trial> trials) {
    StraightLine line =
        StraightLine.through(
            trials.stream()
                .map(trial -> new StraightLine.Point(trial.seconds, trial.rate * trial.seconds))
                .toList());
    return line == null ? null : fit(line.slope(), line.intercept());
  }

  private static @Nullable Fit inverseTime(List<Trial> trials) {
    StraightLine line =
        StraightLine.through(
            trials.stream()
                .map(trial -> new StraightLine.Point(1 / trial.seconds, trial.rate))
                .toList());
    return line == null ? null : fit(line.intercept(), line.slope());
  }

  private static @Nullable Fit fit(double critical, double reserve) {
    return critical > 0 && reserve > 0 ? new Fit(critical, reserve) : null;
  }

  private static List<String> reservations(List<Trial> used, double spread, Constants constants) {
    List<String> reservations = new ArrayList<>();
    LocalDate first = used.stream().map(Trial::date).min(Comparator.naturalOrder()).orElseThrow();
    LocalDate last = used.stream().map(Trial::date).max(Comparator.naturalOrder()).orElseThrow();
    double within = constants.of(Constant.CRITICAL_TRIALS_WITHIN);
    if (ChronoUnit.DAYS.between(first, last) > within) {
      reservations.add("the trials lie more than " + (long) within + " days apart");
    }
    double longest = used.get(used.size() - 1).seconds;
    if (Limit.below(longest, constants.of(Constant.CRITICAL_TRIAL_PREFERRED))) {
      reservations.add("the longest trial is short");
    }
    if (Limit.above(spread, constants.of(Constant.CRITICAL_SPREAD))) {
      reservations.add("the two lines disagree: test again");
    }
    return List.copyOf(reservations);
  }

  private static CriticalRate unknown(String because) {
    return new CriticalRate(null, null, null, List.of(), because);
  }
}
