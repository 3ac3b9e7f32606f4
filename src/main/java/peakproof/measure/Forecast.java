package peakproof.measure;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Goal;
import peakproof.document.Plan;
import peakproof.measure.Projected.Narrowing;

/**
 * What tests and log say of race day, leg by leg, beside the goal and the limits of the race.
 *
 * @param legs swim, transitions, bike and run, then the total
 * @param cutOffs the limits the event sets
 */
public record Forecast(List<Leg> legs, List<CutOff> cutOffs) {

  /**
   * A leg, both transitions together, or the total.
   *
   * @param time projected, seconds
   * @param goal seconds; null without one
   */
  public record Leg(String name, Projected time, @Nullable Double goal) {

    /** How a goal stands to the projected range. */
    public enum Verdict {
      /** Faster than the fast end. */
      AHEAD,
      WITHIN,
      /** Slower than the slow end. */
      BEHIND
    }

    /** Null without a goal or a range. */
    public @Nullable Verdict verdict() {
      Projected.Range range = time.range();
      if (range == null || goal == null) {
        return null;
      }
      if (Limit.below(goal, range.low())) {
        return Verdict.AHEAD;
      }
      return Limit.above(goal, range.high()) ? Verdict.BEHIND : Verdict.WITHIN;
    }
  }

  /**
   * A limit of the race.
   *
   * @param name swim, bike or finish
   * @param limit seconds from the start
   * @param reached when it is reached, seconds from the start
   */
  public record CutOff(String name, double limit, Projected reached) {}

  /** Puts a projection beside the plan's goal and the event's limits. */
  public static Forecast of(Plan plan, RaceProjection projection) {
    Goal goal = plan.goal();
    Event.CutOffs limits = plan.event().cutOffs();
    return new Forecast(
        List.of(
            new Leg("swim", projection.swim(), goal == null ? null : told(goal.swim())),
            new Leg(
                "transitions",
                projection.transitions(),
                goal == null ? null : told(goal.transitions())),
            new Leg("bike", projection.bike(), goal == null ? null : told(goal.bike())),
            new Leg("run", projection.run(), goal == null ? null : told(goal.run())),
            new Leg("total", projection.finish(), goal == null ? null : told(goal.total()))),
        Stream.of(
                cutOff("swim", limits.swim(), projection.swim()),
                cutOff("bike", limits.bike(), projection.bikeEnd()),
                cutOff("finish", limits.finish(), projection.finish()))
            .filter(Objects::nonNull)
            .toList());
  }

  private static @Nullable CutOff cutOff(String name, @Nullable Double limit, Projected reached) {
    Double told = told(limit);
    return told == null ? null : new CutOff(name, told, reached);
  }

  private static @Nullable Double told(@Nullable Double seconds) {
    return seconds == null ? null : Amount.finite(seconds);
  }

  /** The entry that would narrow the total most; null when none would, or a leg is unknown. */
  public @Nullable Narrowing narrowsMost() {
    return legs.stream()
        .map(leg -> leg.time().narrowing())
        .filter(Objects::nonNull)
        .max(Comparator.comparingDouble(Narrowing::seconds))
        .orElse(null);
  }
}
