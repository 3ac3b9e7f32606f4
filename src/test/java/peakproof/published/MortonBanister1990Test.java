package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.measure.Amount;
import peakproof.measure.Constants;
import peakproof.measure.HeartRateRange;
import peakproof.measure.ShippedConstants;
import peakproof.measure.Trimp;
import peakproof.measure.Trimp.Coefficients;
import peakproof.measure.Trimp.Stretch;

/**
 * Morton RH, Fitz-Clark JR, Banister EW 1990, J Appl Physiol 69:1171 (coefficients from memory):
 * the training impulse. Values are arithmetic from the formula, to a hundredth.
 */
class MortonBanister1990Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void hoursAtOneReserve() {
    assertThat(impulse(Coefficients.MEN, new Stretch(60, 0.70))).isCloseTo(103.07, within(0.005));
    assertThat(impulse(Coefficients.WOMEN, new Stretch(60, 0.70))).isCloseTo(116.26, within(0.005));
    assertThat(impulse(Coefficients.MEN, new Stretch(120, 0.60))).isCloseTo(145.82, within(0.005));
    assertThat(impulse(Coefficients.WOMEN, new Stretch(120, 0.60)))
        .isCloseTo(168.65, within(0.005));
    assertThat(impulse(Coefficients.MEN, new Stretch(60, 0.50))).isCloseTo(50.14, within(0.005));
  }

  @Test
  void anHourAt140BetweenRest50AndMaximum180() {
    double reserve =
        HeartRateRange.of(50.0, 180.0, null, CONSTANTS).shareOfReserve(140, CONSTANTS).value();
    assertThat(impulse(Coefficients.MEN, new Stretch(60, reserve)))
        .isCloseTo(100.44, within(0.005));
  }

  @Test
  void theMeanOfIntervalsUnderReadsThem() {
    double intervals = impulse(Coefficients.MEN, new Stretch(30, 0.5), new Stretch(30, 0.9));
    assertThat(intervals).isGreaterThan(impulse(Coefficients.MEN, new Stretch(60, 0.7)));
  }

  @Test
  void splittingAStretchChangesNothing() {
    assertThat(impulse(Coefficients.WOMEN, new Stretch(20, 0.6), new Stretch(40, 0.6)))
        .isCloseTo(impulse(Coefficients.WOMEN, new Stretch(60, 0.6)), within(1e-9));
  }

  @Test
  void nobodyIsGuessedIntoCoefficients() {
    assertThat(Coefficients.of("female")).isEqualTo(Coefficients.WOMEN);
    assertThat(Coefficients.of("male")).isEqualTo(Coefficients.MEN);
    assertThat(Coefficients.of(null)).isNull();
    Amount undeclared = Trimp.of(List.of(new Stretch(60, 0.7)), Coefficients.of(null), CONSTANTS);
    assertThat(undeclared.value()).isNull();
    assertThat(undeclared.because()).contains("sex");
  }

  @Test
  void unknownOutsideTheReserve() {
    assertThat(impulse(Coefficients.MEN, new Stretch(60, 1.0))).isNotNull();
    assertThat(impulse(Coefficients.MEN, new Stretch(60, 1.2))).isNull();
    assertThat(impulse(Coefficients.MEN, new Stretch(60, -0.1))).isNull();
    assertThat(impulse(Coefficients.MEN, new Stretch(-1, 0.5))).isNull();
    assertThat(impulse(Coefficients.MEN)).isEqualTo(0);
  }

  private static Double impulse(Coefficients coefficients, Stretch... stretches) {
    return Trimp.of(Arrays.asList(stretches), coefficients, CONSTANTS).value();
  }
}
