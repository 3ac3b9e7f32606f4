package peakproof.measure;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.Plan;

/**
 * What tests and log say of race day, a range for every leg and never one number. The goal is no
 * evidence: a leg without tests or log is unknown. Allowances are common practice, no source.
 *
 * @param swim seconds of the swim
 * @param bike seconds of the ride
 * @param run seconds of the run
 * @param transitions both together, as the goal gives them, else 5 to 15 min each
 * @param bikeEnd from the start to the end of the ride, half of the transitions with it
 * @param finish from the start to the finish
 */
public record RaceProjection(
    Projected swim,
    Projected bike,
    Projected run,
    Projected transitions,
    Projected bikeEnd,
    Projected finish) {

  /** Projects the race from what is known on the as-of date. */
  public static RaceProjection of(
      Plan plan, @Nullable Log log, LocalDate asOf, Calibration athlete, Constants constants) {
    Projected swim = SwimLeg.projected(plan, log, asOf, athlete, constants);
    Projected bike = BikeLeg.projected(plan, log, asOf, athlete, constants);
    Projected run = RunLeg.projected(plan, log, asOf, athlete, constants);
    Projected transitions = transitions(plan, constants);
    Projected bikeEnd = swim.then(transitions.half()).then(bike);
    Projected finish = bikeEnd.then(transitions.half()).then(run);
    return new RaceProjection(swim, bike, run, transitions, bikeEnd, finish);
  }

  private static Projected transitions(Plan plan, Constants constants) {
    var goal = plan.goal();
    Double given = goal == null ? null : goal.transitions();
    if (goal != null && given != null) {
      return Projected.of(
          new Projected.Range(given, given, given),
          List.of(goal.at() + "/transitions"),
          List.of("as the goal gives them"));
    }
    Projected.Range one =
        new Projected.Range(
            constants.of(Constant.TRANSITION_FAST),
            constants.of(Constant.TRANSITION_LIKELY),
            constants.of(Constant.TRANSITION_SLOW));
    Projected.Range both = one.times(2 * SetPieces.SECONDS_A_MINUTE);
    return Projected.of(
            both,
            List.of(),
            List.of(
                InWords.span(Constant.TRANSITION_FAST, Constant.TRANSITION_SLOW, constants)
                    + " min each, as none are given"))
        .narrowedBy("goal.transitions", both.width());
  }
}
