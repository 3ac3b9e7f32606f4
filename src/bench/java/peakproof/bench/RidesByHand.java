package peakproof.bench;

import java.util.stream.Stream;
import peakproof.fact.Brick;
import peakproof.fact.RideEffort;
import peakproof.fact.Run;
import peakproof.fact.Settings;
import peakproof.fact.Window;
import peakproof.measure.DistanceClass;

/** The rules of cycling and of running off the bike among the twenty. */
final class RidesByHand {
  private RidesByHand() {}

  static Stream<Window> longestTooShort(Evidence all, Settings set) {
    Window window = all.window(set);
    DistanceClass distance = all.facts.race().distance();
    Double leg = all.facts.goal().bikeMinutes();
    return window != null
            && distance != null
            && leg != null
            && window.longestRideMinutes() < set.share("longest", distance) * leg
        ? Evidence.surely(window, "longestRideMinutes")
        : Stream.empty();
  }

  static Stream<RideEffort> tooHardLong(Evidence all, Settings set) {
    if (!all.knows("rides.held")) {
      return Stream.empty();
    }
    double minutes = set.minutes("long");
    return all.rideEfforts.stream()
        .filter(
            ride ->
                ByHand.atLeast(ride.powerMinutes(), minutes)
                        && ByHand.above(ride.powerShare(), set.share("power"))
                    || ByHand.atLeast(ride.heartMinutes(), minutes)
                        && ByHand.above(ride.heartShare(), set.share("heart-rate")));
  }

  static Stream<Window> brickLongNone(Evidence all, Settings set) {
    Window window = all.window(set);
    if (window == null
        || !all.over(DistanceClass.FULL, DistanceClass.HALF)
        || !all.onFoot()
        || !all.knows("goal.run")) {
      return Stream.empty();
    }
    boolean done =
        all.bricks.stream()
            .filter(brick -> !brick.date().isBefore(window.first()))
            .filter(brick -> !brick.date().isAfter(window.last()))
            .anyMatch(
                brick ->
                    ByHand.atLeast(brick.rideMinutes(), set.minutes("ride"))
                        && brick.runRaceMinutes() >= set.minutes("run"));
    return done ? Stream.empty() : Evidence.surely(window);
  }

  static Stream<Brick> brickTooBig(Evidence all, Settings set) {
    return all.over(DistanceClass.FULL, DistanceClass.HALF) && all.onFoot()
        ? all.bricks.stream().filter(Brick::planned).filter(brick -> tooBig(brick, set))
        : Stream.empty();
  }

  private static boolean tooBig(Brick brick, Settings set) {
    double share = set.share("race-like");
    return brick.daysToRace() <= set.day("long-from")
            && ByHand.atLeast(brick.rideMinutes(), set.minutes("ride"))
            && ByHand.atLeast(brick.runMinutes(), set.minutes("run"))
        || brick.daysToRace() <= set.day("race-like-from")
            && ByHand.atLeast(brick.rideShare(), share)
            && ByHand.atLeast(brick.runShare(), share);
  }

  static Stream<Run> hardOffBike(Evidence all, Settings set) {
    return all.over(DistanceClass.FULL, DistanceClass.HALF, DistanceClass.STANDARD) && all.onFoot()
        ? all.runs.stream()
            .filter(run -> run.planned() && run.hard())
            .filter(run -> run.rideHard() || ByHand.atLeast(run.rideMinutes(), set.minutes("ride")))
        : Stream.empty();
  }
}
