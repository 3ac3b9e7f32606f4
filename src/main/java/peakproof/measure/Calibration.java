package peakproof.measure;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Event;
import peakproof.document.Goal;
import peakproof.document.Log;
import peakproof.document.Plan;
import peakproof.document.Target;

/**
 * What turns a plan's words into speeds, times and domains for this athlete, as known on one day.
 *
 * @param distance class of the race, or null when the event does not say
 * @param goalSwimPace of the goal, s/100 m
 * @param goalRunPace of the goal, s/km
 * @param goalBikeSpeed of the goal, km/h
 * @param criticalSwimSpeed from tests, m/s
 * @param swimReserve the distance that can be swum above critical swim speed, m
 * @param thresholdSwimPace pace at critical swim speed, s/100 m; without tests the goal pace less 4
 *     s (origin {@code GOAL})
 * @param criticalPower the coach's figure, else from two or more power tests, W
 * @param openMarathonPace pace of a marathon run fresh, s/km: by exponent 1.06 from the newest race
 *     or test of the last 16 weeks; without one the goal pace divided by 1.08 (origin {@code GOAL})
 * @param runTest the race or test behind it, or null
 * @param rideSpeed median of the logged rides of the last 8 weeks that have distance and time, km/h
 * @param maximumHeartRate beats per minute, or null
 * @param restingHeartRate beats per minute, or null
 * @param heartRateUsable false under a beta-blocker, when no heart rate says anything of intensity
 * @param bikeGoal what the bike leg is ridden at by the goal, or null
 */
public record Calibration(
    @Nullable DistanceClass distance,
    Reading goalSwimPace,
    Reading goalRunPace,
    Reading goalBikeSpeed,
    Reading criticalSwimSpeed,
    Reading swimReserve,
    Reading thresholdSwimPace,
    Reading criticalPower,
    Reading openMarathonPace,
    Athlete.@Nullable Test runTest,
    Reading rideSpeed,
    @Nullable Double maximumHeartRate,
    @Nullable Double restingHeartRate,
    boolean heartRateUsable,
    @Nullable Target bikeGoal) {

  /** Calibrates from what the plan states and from tests and log entries up to the as-of date. */
  public static Calibration of(Plan plan, @Nullable Log log, LocalDate asOf, Constants constants) {
    Athlete athlete = plan.athlete();
    Goal goal = plan.goal();
    Event.Legs legs = plan.event().legs();
    Reading swimGoal = GoalPace.swim(goal, legs);
    Reading runGoal = GoalPace.run(goal, legs);
    SwimTests swimTests = SwimTests.newest(athlete.tests(), asOf, constants);
    Athlete.Test runTest = RunTests.newest(athlete.tests(), asOf, constants);
    return new Calibration(
        DistanceClass.of(plan.event(), constants),
        swimGoal,
        runGoal,
        GoalPace.bike(goal, legs),
        swimTests.speed(),
        swimTests.reserve(),
        swimTests.pace(swimGoal, constants),
        PowerTests.criticalPower(athlete, asOf, constants),
        RunTests.openMarathonPace(runTest, runGoal, constants),
        runTest,
        LoggedRides.medianSpeed(log, asOf, constants),
        finite(athlete.maximumHeartRate()),
        finite(athlete.restingHeartRate()),
        !athlete.health().conditions().contains("beta-blocker"),
        goal == null ? null : goal.bikeEffort());
  }

  private static @Nullable Double finite(@Nullable Double figure) {
    return figure == null ? null : Amount.finite(figure);
  }
}
