package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;
import peakproof.measure.WeekChange;
import peakproof.measure.WeekVolume;

/**
 * A week against the weeks before it: shares by plain arithmetic. No universal progression limit is
 * supported: Fredette A et al. 2022 (review of 36 prospective studies, by secondary text). The
 * robust form and its floors are common practice, no source.
 */
class WeekChangeTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void loadsAndHours() {
    assertThat(change(720, 600, 600, 600).change()).isCloseTo(0.20, within(1e-9));
    assertThat(change(9.75, 7.5, 7.5, 7.5).change()).isCloseTo(0.30, within(1e-9));
  }

  @Test
  void againstTheWeekBeforeAlone() {
    assertThat(WeekChange.fromLast(720.0, 600.0, 0).change()).isCloseTo(0.20, within(1e-9));
    assertThat(WeekChange.fromLast(9.75, 7.5, 0).change()).isCloseTo(0.30, within(1e-9));
    assertThat(WeekChange.fromLast(9.75, 7.5, 7.5).change()).isCloseTo(0.30, within(1e-9));
    assertThat(WeekChange.fromLast(9.75, 7.4, 7.5).because()).contains("too small");
    assertThat(WeekChange.fromLast(9.75, 0.0, 0).change()).isNull();
    assertThat(WeekChange.fromLast(null, 7.5, 0).because()).contains("known");
    assertThat(WeekChange.fromLast(9.75, null, 0).change()).isNull();
  }

  @Test
  void weekAfterALighterOneIsNoJump() {
    List<WeekVolume> before = List.of(full(38), full(40), full(44), new WeekVolume(24.0, true));
    WeekChange robust = WeekChange.of(46.0, before, 10, CONSTANTS);
    // 46/44 = 1.0454...; given as +4.5 %
    assertThat(robust.change()).isCloseTo(0.045, within(0.0005));
    assertThat(robust.best()).isEqualTo(44);
    // against the lighter week itself it would be a jump
    assertThat(WeekChange.fromLast(46.0, 24.0, 10).change()).isCloseTo(0.917, within(0.0005));
  }

  @Test
  void undefinedBelowTheFloor() {
    double floor = CONSTANTS.of(Constant.WEEK_FLOOR_RUN_DISTANCE);
    assertThat(floor).isEqualTo(10_000);
    assertThat(above(floor, 9_999.0).change()).isNull();
    assertThat(above(floor, 9_999.0).because()).contains("too small");
    assertThat(above(floor, 10_000.0).change()).isCloseTo(1, within(1e-9));
    assertThat(CONSTANTS.of(Constant.WEEK_FLOOR_RUN)).isEqualTo(60);
    assertThat(CONSTANTS.of(Constant.WEEK_FLOOR_BIKE)).isEqualTo(120);
    assertThat(CONSTANTS.of(Constant.WEEK_FLOOR_SWIM)).isEqualTo(2000);
  }

  @Test
  void unknownWithoutThreeKnownWeeks() {
    assertThat(WeekChange.of(10.0, List.of(full(9), full(9)), 0, CONSTANTS).change()).isNull();
    List<WeekVolume> hole = List.of(full(9), new WeekVolume(null, false), full(9));
    assertThat(WeekChange.of(10.0, hole, 0, CONSTANTS).change()).isNull();
    assertThat(WeekChange.of(null, List.of(full(9), full(9), full(9)), 0, CONSTANTS).change())
        .isNull();
  }

  @Test
  void unknownLighterWeekDoesNotMatter() {
    List<WeekVolume> before = List.of(full(9), full(10), new WeekVolume(null, true), full(8));
    assertThat(WeekChange.of(11.0, before, 0, CONSTANTS).change()).isCloseTo(0.1, within(1e-9));
  }

  @Test
  void onlyTheLastThreeCount() {
    List<WeekVolume> before = List.of(full(20), full(10), full(10), full(10));
    assertThat(WeekChange.of(10.0, before, 0, CONSTANTS).change()).isEqualTo(0);
  }

  private static WeekChange above(double floor, double best) {
    return WeekChange.of(2 * best, List.of(full(best), full(best), full(best)), floor, CONSTANTS);
  }

  private static WeekChange change(double week, double... before) {
    return WeekChange.of(
        week,
        java.util.Arrays.stream(before).mapToObj(WeekChangeTest::full).toList(),
        0,
        CONSTANTS);
  }

  private static WeekVolume full(double amount) {
    return new WeekVolume(amount, false);
  }
}
