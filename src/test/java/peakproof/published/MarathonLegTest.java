package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Athletes;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.Pace;
import peakproof.measure.Projected;
import peakproof.measure.RaceProjection;
import peakproof.measure.RunLegRatio;
import peakproof.measure.RunLegRatio.Verdict;
import peakproof.measure.ShippedConstants;

/**
 * The marathon leg against a marathon run fresh: bands are common practice, no source (no good
 * cohort was found). 3:30 fresh times 1.10 is 3:51:00.
 */
class MarathonLegTest {
  private static final double THREE_THIRTY = 210 * 60;

  @Test
  void marathonOf330TimesItsBand() {
    Projected.Range range = run(ShippedConstants.with(Constant.RUN_LEG_FULL_LIKELY, 1.10));
    assertThat(range.likely()).isCloseTo(3 * 3600 + 51 * 60, within(1e-6));
    assertThat(range.low()).isCloseTo(THREE_THIRTY * 1.08, within(1e-6));
    assertThat(range.high()).isCloseTo(THREE_THIRTY * 1.30, within(1e-6));
  }

  @Test
  void shippedLikelyValueIs115() {
    assertThat(run(ShippedConstants.constants()).likely())
        .isCloseTo(THREE_THIRTY * 1.15, within(1e-6));
  }

  @Test
  void goalOf350AgainstFreshMarathons() {
    assertRatio(205, 1.122, Verdict.PLAUSIBLE);
    assertRatio(220, 1.045, Verdict.QUESTIONABLE);
    assertRatio(235, 0.979, Verdict.IMPLAUSIBLE);
  }

  @Test
  void limitsThemselvesAreNotPast() {
    assertThat(verdict(RunLegRatio.of(100, 100))).isEqualTo(Verdict.QUESTIONABLE);
    assertThat(verdict(RunLegRatio.of(99.9, 100))).isEqualTo(Verdict.IMPLAUSIBLE);
    assertThat(verdict(RunLegRatio.of(105, 100))).isEqualTo(Verdict.PLAUSIBLE);
    assertThat(verdict(RunLegRatio.of(104.9, 100))).isEqualTo(Verdict.QUESTIONABLE);
    assertThat(verdict(RunLegRatio.of(135, 100))).isEqualTo(Verdict.PLAUSIBLE);
    assertThat(verdict(RunLegRatio.of(135.1, 100))).isEqualTo(Verdict.GENEROUS);
  }

  @Test
  void theKinderOfTwoExponentsDecides() {
    // a half-marathon of 1:35 is 3:18:04 or 3:23:38 over the marathon (Riegel 1981)
    RunLegRatio both = projected(3 * 3600 + 27 * 60);
    assertThat(both.projected()).isTrue();
    assertThat(both.usual().value()).isCloseTo(207.0 * 60 / 11_884, within(0.0001));
    assertThat(both.cautious().value()).isCloseTo(207.0 * 60 / 12_218, within(0.0001));
    // 1.045 and 1.017; then 1.015 and 0.987; then 0.99 and 0.96; at last 1.36 and 1.32
    assertThat(verdict(both)).isEqualTo(Verdict.QUESTIONABLE);
    assertThat(verdict(projected(3 * 3600 + 21 * 60))).isEqualTo(Verdict.QUESTIONABLE);
    assertThat(verdict(projected(3 * 3600 + 16 * 60))).isEqualTo(Verdict.IMPLAUSIBLE);
    assertThat(verdict(projected(3 * 3600 + 30 * 60))).isEqualTo(Verdict.PLAUSIBLE);
    assertThat(verdict(projected(4 * 3600 + 30 * 60))).isEqualTo(Verdict.PLAUSIBLE);
  }

  @Test
  void unknownWithoutTimes() {
    assertThat(verdict(RunLegRatio.of(0, 100))).isNull();
    assertThat(verdict(RunLegRatio.of(100, 0))).isNull();
    assertThat(RunLegRatio.of(100, 100).projected()).isFalse();
  }

  private static RunLegRatio projected(double goal) {
    return RunLegRatio.projected(
        goal, Pace.MARATHON, Pace.MARATHON / 2, 95 * 60, ShippedConstants.constants());
  }

  private static Verdict verdict(RunLegRatio ratio) {
    return ratio.verdict(ShippedConstants.constants());
  }

  private static void assertRatio(double freshMinutes, double ratio, Verdict verdict) {
    RunLegRatio leg = RunLegRatio.of(230 * 60, freshMinutes * 60);
    assertThat(leg.usual().value()).isCloseTo(ratio, within(0.0005));
    assertThat(verdict(leg)).isEqualTo(verdict);
  }

  private static Projected.Range run(Constants constants) {
    Athletes.Draft draft =
        Athletes.tove().withTests(Athletes.run("2027-05-02", Pace.MARATHON, THREE_THIRTY));
    return RaceProjection.of(draft.plan(), null, Athletes.AS_OF, draft.calibration(), constants)
        .run()
        .range();
  }
}
