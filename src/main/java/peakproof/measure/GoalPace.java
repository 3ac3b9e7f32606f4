package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Goal;
import peakproof.measure.Reading.Origin;

/** What the goal times ask for on the legs of the event. */
final class GoalPace {
  private GoalPace() {}

  private interface Conversion {
    Amount of(double metres, double seconds);
  }

  /** Seconds per 100 m. */
  static Reading swim(@Nullable Goal goal, Event.Legs legs) {
    return read("swim", goal, goal == null ? null : goal.swim(), legs.swim(), Pace::per100m);
  }

  /** Kilometres an hour. */
  static Reading bike(@Nullable Goal goal, Event.Legs legs) {
    return read("bike", goal, goal == null ? null : goal.bike(), legs.bike(), Pace::kmh);
  }

  /** Seconds per kilometre. */
  static Reading run(@Nullable Goal goal, Event.Legs legs) {
    return read("run", goal, goal == null ? null : goal.run(), legs.run(), Pace::perKm);
  }

  private static Reading read(
      String leg,
      @Nullable Goal goal,
      @Nullable Double seconds,
      @Nullable Double metres,
      Conversion conversion) {
    if (goal == null || seconds == null) {
      return Reading.unknown("the goal's " + leg + " time");
    }
    if (metres == null) {
      return Reading.unknown("the event's " + leg + " leg");
    }
    return Reading.of(conversion.of(metres, seconds), Origin.GOAL, List.of(goal.at() + "/" + leg));
  }
}
