package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.GoalPaceSet;
import peakproof.measure.RepeatSet;
import peakproof.measure.ShippedConstants;

/**
 * The arithmetic of repeated sets: plain arithmetic, each value worked by hand. The goal-pace set
 * of 38 x 100 m and the least rest of 3 s are common practice, no source.
 */
class RepeatSetTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void goalPaceSetWithTenSecondsRest() {
    RepeatSet set = RepeatSet.withRest(38, 100, 110.53, 10);
    // 37 x 120.53 + 110.53 = 4570.14 s, given as 4570.1; density given to three digits
    assertThat(set.sessionSeconds()).isCloseTo(4570.1, within(0.05));
    assertThat(set.density()).isCloseTo(0.919, within(0.0005));
    assertThat(set.feasible()).isTrue();
  }

  @Test
  void goalPaceSetOffTwoMinutes() {
    RepeatSet set = RepeatSet.offInterval(38, 100, 105, 120, CONSTANTS);
    assertThat(set.rest()).isEqualTo(15);
    assertThat(set.sessionSeconds()).isEqualTo(4545);
    assertThat(set.late()).isEqualTo(0);
  }

  @Test
  void tenTimes400OffEightMinutes() {
    RepeatSet set = RepeatSet.offInterval(10, 400, 112, 480, CONSTANTS);
    assertThat(set.rest()).isEqualTo(32);
    assertThat(set.sessionSeconds()).isEqualTo(4768);
  }

  @Test
  void cannotBeSwum() {
    RepeatSet set = RepeatSet.offInterval(20, 100, 118, 115, CONSTANTS);
    assertThat(set.rest()).isEqualTo(-3);
    assertThat(set.feasible()).isFalse();
    assertThat(set.late()).isEqualTo(57);
  }

  @Test
  void threeSecondsOfRestAreEnoughAndLessIsNot() {
    assertThat(RepeatSet.offInterval(10, 100, 117, 120, CONSTANTS).feasible()).isTrue();
    assertThat(RepeatSet.offInterval(10, 100, 117.1, 120, CONSTANTS).feasible()).isFalse();
  }

  @Test
  void reserveLastsForFourRepetitionsWithoutRecovery() {
    assertThat(RepeatSet.worstCase(1, 0.952381, 19.0476, 100)).isCloseTo(4.0, within(0.00005));
    assertThat(RepeatSet.worstCase(1 + 5e-10, 1, 20, 100)).isCloseTo(4e8, within(1e3));
    assertThat(RepeatSet.worstCase(0.95, 0.952381, 19.0476, 100)).isNull();
  }

  @Test
  void goalPaceSetIsPassedAtGoalPaceWithAnEvenLastQuarter() {
    assertThat(goalSet(110, 110, 110, 110).passed()).isTrue();
    assertThat(goalSet(109, 110, 110, 111.1).passed()).isFalse();
    assertThat(goalSet(109, 110, 109, 111.1).passed()).isTrue();
    assertThat(goalSet(108, 110, 110, 110.2).fade().value()).isCloseTo(0.02037, within(5e-6));
    assertThat(goalSet(108, 110, 110, 110.2).passed()).isFalse();
    assertThat(goalSet(108, 110, 110, 110.16).passed()).isTrue();
    assertThat(goalSet(110, 105, 105, 107.0).passed()).isFalse();
    assertThat(goalSet(111, 110, 110, 110).mean().value()).isCloseTo(110.25, within(1e-9));
    assertThat(goalSet(111, 110, 110, 110).passed()).isFalse();
  }

  @Test
  void quartersOfALongSetAreMeans() {
    GoalPaceSet set = goalSet(100, 102, 110, 110, 110, 110, 110, 104, 100);
    assertThat(set.fade().value()).isCloseTo(102.0 / 101 - 1, within(1e-12));
  }

  @Test
  void fewerThanFourRepetitionsAreNoTest() {
    assertThat(goalSet(110, 110, 110).passed()).isNull();
    assertThat(goalSet(110, 110, 110, 0).mean().because()).contains("four repetitions");
    assertThat(GoalPaceSet.of(List.of(1.0, 1.0, 1.0, 1.0), 0, CONSTANTS).passed()).isNull();
  }

  private static GoalPaceSet goalSet(double... seconds) {
    return GoalPaceSet.of(Arrays.stream(seconds).boxed().toList(), 110, CONSTANTS);
  }
}
