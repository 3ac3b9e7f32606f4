package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import peakproof.document.Sport;
import peakproof.document.Target;

/** Within 3 % of the goal is the goal (common practice, no source). The athlete: 218 W, 182/46. */
class GoalEffortTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void likeIsHeldAgainstLikeWithoutTheAthletesFigures() {
    assertAlike(new Target.ShareOfMaximum(0.70), new Target.ShareOfMaximum(0.72), true);
    assertAlike(new Target.ShareOfMaximum(0.70), new Target.ShareOfMaximum(0.73), false);
    assertAlike(new Target.ShareOfReserve(0.60), new Target.ShareOfReserve(0.61), true);
    assertAlike(new Target.ShareOfReserve(0.60), new Target.ShareOfReserve(0.63), false);
    assertAlike(new Target.ShareOfCriticalPower(0.70), new Target.ShareOfCriticalPower(0.69), true);
    assertAlike(
        new Target.ShareOfCriticalPower(0.70), new Target.ShareOfCriticalPower(0.65), false);
    assertAlike(new Target.Rating(5), new Target.Rating(5), true);
    assertAlike(new Target.Rating(5), new Target.Rating(6), false);
  }

  @Test
  void unlikeKindsOfEqualNumbersAreNotTheSame() {
    assertAlike(new Target.ShareOfMaximum(0.70), new Target.ShareOfReserve(0.70), false);
    assertAlike(new Target.ShareOfCriticalPower(0.70), new Target.ShareOfMaximum(0.70), false);
  }

  @Test
  void powerAndItsShareMeetThroughCriticalPower() {
    Calibration share = goal(new Target.ShareOfCriticalPower(0.70), 218.0);
    assertThat(matches(share, new Target.Power(0.70 * 218))).isTrue();
    assertThat(matches(share, new Target.Power(0.75 * 218))).isFalse();
    Calibration watts = goal(new Target.Power(150), 218.0);
    assertThat(matches(watts, new Target.ShareOfCriticalPower(150 / 218.0))).isTrue();
    assertThat(matches(watts, new Target.ShareOfCriticalPower(0.8))).isFalse();
    assertThat(matches(watts, new Target.Power(154))).isTrue();
    assertThat(matches(watts, new Target.Power(155))).isFalse();
    Calibration untested = goal(new Target.Power(150), null);
    assertThat(matches(untested, new Target.ShareOfCriticalPower(150 / 218.0))).isFalse();
  }

  @Test
  void theGoalOfTheRideIsNoneOfTheRun() {
    Calibration athlete = goal(new Target.ShareOfMaximum(0.70), 218.0);
    assertThat(GoalEffort.matches(new Target.ShareOfMaximum(0.70), Sport.RUN, athlete, CONSTANTS))
        .isFalse();
  }

  @Test
  void aRatingOfTheGoalKeepsItsOwnRatingAndIsRaceEffort() {
    Calibration athlete = goal(new Target.Rating(6), 218.0);
    Intensity held = Intensity.of(new Target.Rating(6), false, Sport.BIKE, athlete, CONSTANTS);
    assertThat(held.rating()).isEqualTo(6);
    assertThat(held.race()).isTrue();
  }

  private static void assertAlike(Target goal, Target target, boolean alike) {
    assertThat(matches(goal(goal, null), target)).isEqualTo(alike);
  }

  private static boolean matches(Calibration athlete, Target target) {
    return GoalEffort.matches(target, Sport.BIKE, athlete, CONSTANTS);
  }

  private static Calibration goal(Target effort, Double criticalPower) {
    return Athletes.tove()
        .withGoal(Athletes.goal(4200.0, 21_600.0, 13_800.0, 600.0, effort))
        .withFigures(criticalPower, null, null)
        .calibration();
  }
}
