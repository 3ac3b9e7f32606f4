package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Plan;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.DistanceClass;
import peakproof.measure.Pace;

/** Makes the facts of which there is one each: race, athlete, goal, race day. */
final class People {
  private final Plan plan;
  private final Calibration calibration;
  private final Constants constants;

  People(Plan plan, Calibration calibration, Constants constants) {
    this.plan = plan;
    this.calibration = calibration;
    this.constants = constants;
  }

  Race race(LocalDate asOf) {
    Event event = plan.event();
    Event.Swim swim = event.swim();
    return new Race(
        event.date(),
        ChronoUnit.DAYS.between(asOf, event.date()),
        calibration.distance(),
        swim.water(),
        swim.start(),
        swim.starters() == null ? null : (Double) (double) swim.starters(),
        swim.direction(),
        swim.conditions().contains("chop"),
        swim.conditions().contains("low-sun"),
        event.legs().swim(),
        event.legs().bike(),
        event.legs().run(),
        Race.wetsuitLikely(event, constants.of(Constant.WETSUIT_LIKELY_TO)),
        expectedMinutes());
  }

  private @Nullable Double expectedMinutes() {
    peakproof.document.Goal goal = plan.goal();
    Double total = goal == null ? null : goal.total();
    if (total == null && goal != null) {
      total = sum(goal);
    }
    if (total != null) {
      return total / 60;
    }
    if (calibration.distance() == DistanceClass.FULL) {
      return constants.of(Constant.USUAL_FULL);
    }
    return calibration.distance() == DistanceClass.HALF ? constants.of(Constant.USUAL_HALF) : null;
  }

  private static @Nullable Double sum(peakproof.document.Goal goal) {
    Double swim = goal.swim();
    Double bike = goal.bike();
    Double run = goal.run();
    Double transitions = goal.transitions();
    return swim == null || bike == null || run == null || transitions == null
        ? null
        : (Double) (swim + bike + run + transitions);
  }

  Athlete athlete(LocalDate asOf) {
    peakproof.document.Athlete its = plan.athlete();
    Standing standing = Standing.of(plan, constants);
    return new Athlete(
        its.at(),
        standing.age(),
        standing.masters(),
        standing.firstTimer(),
        standing.experienced(),
        its.health().injuries().stream()
            .anyMatch(injury -> injury.to() == null || !injury.to().isBefore(asOf)),
        "aero".equals(its.position()),
        "both".equals(its.breathes()),
        its.category(),
        its.available() == null || its.available().weekSeconds() == null
            ? null
            : (Double) (its.available().weekSeconds() / 3600));
  }

  Goal goal(Timeline timeline) {
    peakproof.document.Goal goal = plan.goal();
    Double critical = calibration.criticalSwimSpeed().value();
    if (goal == null) {
      return new Goal(plan.at(), null, null, null, null, null, null, null, null);
    }
    return new Goal(
        goal.at(),
        minutes(goal.swim()),
        minutes(goal.bike()),
        minutes(goal.run()),
        minutes(goal.total()),
        minutes(sum(goal)),
        calibration.goalSwimPace().value(),
        critical == null ? null : Pace.per100m(critical, 1).value(),
        held(timeline));
  }

  /** What the newest swim in the log with a held pace was held at, seconds per 100 m. */
  private static @Nullable Double held(Timeline timeline) {
    return timeline
        .sessions()
        .filter(session -> session instanceof Swim && !session.planned())
        .map(session -> session.written.recorded().held())
        .filter(Objects::nonNull)
        .reduce((earlier, later) -> later)
        .map(pace -> 100 * pace)
        .orElse(null);
  }

  private static @Nullable Double minutes(@Nullable Double seconds) {
    return seconds == null ? null : (Double) (seconds / 60);
  }

  RaceDay raceDay() {
    Plan.RaceDay day = plan.raceDay();
    if (day == null) {
      return new RaceDay(plan.at(), null, null, null, null, false, false, null);
    }
    return new RaceDay(
        day.at(),
        day.bikeFuel() == null ? null : day.bikeFuel().carbohydrate(),
        day.runFuel() == null ? null : day.runFuel().carbohydrate(),
        day.bikeFuel() == null ? null : day.bikeFuel().fluid(),
        day.runFuel() == null ? null : day.runFuel().fluid(),
        day.bikeFuel() != null && day.bikeFuel().sources().size() == 1,
        day.runFuel() != null && day.runFuel().sources().size() == 1,
        day.wetsuitWorn());
  }

  String blockPointer() {
    return Stream.ofNullable(plan.block())
        .map(Plan.Block::at)
        .findFirst()
        .orElse(plan.at() + "/weeks");
  }
}
