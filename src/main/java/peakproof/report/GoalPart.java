package peakproof.report;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Words;
import peakproof.measure.Forecast;
import peakproof.measure.Projected;

/**
 * The goal of each leg against the range that tests and log support, never one time alone.
 *
 * @param narrows what would narrow the forecast most; null when nothing would
 */
record GoalPart(List<Leg> legs, List<Limit> limits, @Nullable String narrows) {
  private static final double WIDTH = 180;
  private static final double EDGE = 8;

  /**
   * A leg with its range.
   *
   * @param drawn null without a range
   * @param verdict how the goal stands to the range, or what is missing for one
   */
  record Leg(
      String name,
      String fast,
      String likely,
      String slow,
      String goal,
      String verdict,
      @Nullable Drawn drawn) {}

  /** Where the range and the goal are, pixels from the left; {@code goal} is null without one. */
  record Drawn(String low, String likely, String high, @Nullable String goal) {}

  /** A limit of the race with the range in which it is reached. */
  record Limit(String name, String limit, String fast, String slow) {}

  static GoalPart of(Forecast forecast) {
    Projected.Narrowing narrows = forecast.narrowsMost();
    return new GoalPart(
        forecast.legs().stream().map(GoalPart::leg).toList(),
        forecast.cutOffs().stream().map(GoalPart::limit).toList(),
        narrows == null
            ? null
            : narrows.entry() + ", by about " + Words.minutes(narrows.seconds() / 60));
  }

  /** True when neither goal nor tests say anything. */
  boolean isEmpty() {
    return legs.stream().allMatch(leg -> leg.drawn() == null && leg.goal().equals("-"));
  }

  private static Leg leg(Forecast.Leg leg) {
    Projected.Range range = leg.time().range();
    return new Leg(
        leg.name(),
        clock(range == null ? null : (Double) range.low()),
        clock(range == null ? null : (Double) range.likely()),
        clock(range == null ? null : (Double) range.high()),
        clock(leg.goal()),
        range == null ? "needs " + leg.time().because() : verdict(leg.verdict()),
        range == null ? null : drawn(range, leg.goal()));
  }

  private static String verdict(Forecast.Leg.@Nullable Verdict verdict) {
    if (verdict == null) {
      return "";
    }
    return switch (verdict) {
      case AHEAD -> "goal faster than the range";
      case WITHIN -> "goal within the range";
      case BEHIND -> "goal slower than the range";
    };
  }

  private static Drawn drawn(Projected.Range range, @Nullable Double goal) {
    double from = goal == null ? range.low() : Math.min(goal, range.low());
    double to = goal == null ? range.high() : Math.max(goal, range.high());
    return new Drawn(
        at(range.low(), from, to),
        at(range.likely(), from, to),
        at(range.high(), from, to),
        goal == null ? null : at(goal, from, to));
  }

  private static String at(double value, double from, double to) {
    double share = to > from ? (value - from) / (to - from) : 0.5;
    return Axis.pixels(EDGE + share * (WIDTH - 2 * EDGE));
  }

  private static Limit limit(Forecast.CutOff limit) {
    Projected.Range range = limit.reached().range();
    return new Limit(
        limit.name(),
        clock(limit.limit()),
        range == null ? "?" : clock(range.low()),
        range == null ? "?" : clock(range.high()));
  }

  /** {@code 1:09:20}, or a dash for nothing. */
  static String clock(@Nullable Double seconds) {
    if (seconds == null) {
      return "-";
    }
    long whole = Math.round(seconds);
    return String.format(Locale.ROOT, "%d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60);
  }
}
