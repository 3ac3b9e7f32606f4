package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Amount;
import peakproof.measure.Constants;
import peakproof.measure.HeartRateRange;
import peakproof.measure.ShippedConstants;

/**
 * Karvonen MJ et al. 1957 (from memory): heart rate as a share of what lies between rest and
 * maximum. Values are arithmetic to the digits shown. What is believed of a heart rate is common
 * practice, no source.
 */
class Karvonen1957Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final HeartRateRange RANGE = of(50.0, 180.0);

  @Test
  void heartRateOf140() {
    assertThat(RANGE.shareOfMaximum(140, CONSTANTS).value()).isCloseTo(0.778, within(0.0005));
    assertThat(RANGE.shareOfReserve(140, CONSTANTS).value()).isCloseTo(0.6923, within(0.00005));
    assertThat(RANGE.because()).isEmpty();
    assertThat(RANGE.estimated()).isFalse();
  }

  @Test
  void seventyPerCentOfEach() {
    assertThat(RANGE.atShareOfMaximum(0.70).value()).isCloseTo(126, within(1e-9));
    assertThat(RANGE.shareOfReserve(126, CONSTANTS).value()).isCloseTo(0.5846, within(0.00005));
    assertThat(RANGE.atShareOfReserve(0.70).value()).isCloseTo(141, within(1e-9));
  }

  @Test
  void theTwoWaysUndoEachOther() {
    for (double share = 0.05; share <= 1; share += 0.05) {
      Amount bpm = RANGE.atShareOfReserve(share);
      assertThat(RANGE.shareOfReserve(bpm.value(), CONSTANTS).value())
          .isCloseTo(share, within(1e-12));
    }
  }

  @Test
  void threeBeatsAboveTheMaximumAreTakenAndFourAreNot() {
    assertThat(RANGE.shareOfReserve(183, CONSTANTS).known()).isTrue();
    assertThat(RANGE.shareOfReserve(184, CONSTANTS).known()).isFalse();
    assertThat(RANGE.shareOfMaximum(183, CONSTANTS).known()).isTrue();
    assertThat(RANGE.shareOfMaximum(184, CONSTANTS).known()).isFalse();
  }

  @Test
  void nothingAtOrBelowRestAndNothingBeyondAllOfIt() {
    assertThat(RANGE.shareOfReserve(50, CONSTANTS).known()).isFalse();
    assertThat(RANGE.shareOfReserve(51, CONSTANTS).known()).isTrue();
    assertThat(RANGE.shareOfMaximum(0, CONSTANTS).known()).isFalse();
    assertThat(RANGE.atShareOfMaximum(1.01).known()).isFalse();
    assertThat(RANGE.atShareOfReserve(1.01).known()).isFalse();
    assertThat(RANGE.atShareOfReserve(0).value()).isEqualTo(50);
    assertThat(RANGE.atShareOfMaximum(1).value()).isEqualTo(180);
  }

  @Test
  void figuresThatAreNotBelievedAreUnknown() {
    assertThat(of(30.0, 225.0).because()).isEmpty();
    assertThat(of(100.0, 120.0).because()).isEmpty();
    assertThat(of(29.0, 180.0).because()).isEqualTo("a measured resting heart rate");
    assertThat(of(101.0, 180.0).resting()).isNull();
    assertThat(of(50.0, 119.0).because()).isEqualTo("a measured maximum heart rate");
    assertThat(of(50.0, 226.0).maximum()).isNull();
    assertThat(of(Double.NaN, Double.NaN).because())
        .isEqualTo("a measured maximum heart rate, a measured resting heart rate");
  }

  @Test
  void saysWhichFigureIsMissing() {
    assertThat(of(null, 180.0).shareOfReserve(140, CONSTANTS).because()).contains("resting");
    assertThat(of(null, 180.0).atShareOfReserve(0.7).because()).contains("resting");
    assertThat(of(null, 180.0).atShareOfMaximum(0.7).value()).isCloseTo(126, within(1e-9));
    assertThat(of(50.0, null).shareOfMaximum(140, CONSTANTS).because()).contains("maximum");
    assertThat(of(50.0, null).atShareOfMaximum(0.7).because()).contains("maximum");
    assertThat(of(50.0, null).shareOfReserve(140, CONSTANTS).because()).contains("maximum");
    assertThat(of(50.0, null).atShareOfReserve(0.7).because()).contains("maximum");
  }

  private static HeartRateRange of(Double resting, Double maximum) {
    return HeartRateRange.of(resting, maximum, null, CONSTANTS);
  }
}
