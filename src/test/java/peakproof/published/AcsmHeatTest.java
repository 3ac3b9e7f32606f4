package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;
import peakproof.measure.Wbgt;
import peakproof.measure.Wbgt.Caution;
import peakproof.measure.Wbgt.Heat;

/**
 * American College of Sports Medicine 2007, as reprinted in table 3 of PMC5094838: edges at 27.9,
 * 30.0 and 32.2 °C. Cautions well below them after the modelling of 2023, doi
 * 10.1080/23328940.2023.2210477; their values are common practice, no source.
 */
class AcsmHeatTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void bandsOfTheTable() {
    assertThat(heat(27.8)).isEqualTo(Heat.LOW);
    assertThat(heat(27.9)).isEqualTo(Heat.MODERATE);
    assertThat(heat(30.0)).isEqualTo(Heat.MODERATE);
    assertThat(heat(30.1)).isEqualTo(Heat.HIGH);
    assertThat(heat(32.2)).isEqualTo(Heat.HIGH);
    assertThat(heat(32.3)).isEqualTo(Heat.EXTREME);
    assertThat(heat(Double.NaN)).isEqualTo(Heat.LOW);
  }

  @Test
  void cautionsOfAForecastOrMeasuredValue() {
    assertThat(Wbgt.caution(21.9, false, CONSTANTS)).isEqualTo(Caution.NONE);
    assertThat(Wbgt.caution(22, false, CONSTANTS)).isEqualTo(Caution.NOTE);
    assertThat(Wbgt.caution(24.9, false, CONSTANTS)).isEqualTo(Caution.NOTE);
    assertThat(Wbgt.caution(25, false, CONSTANTS)).isEqualTo(Caution.CAUTION);
    assertThat(Wbgt.caution(27.9, false, CONSTANTS)).isEqualTo(Caution.CAUTION);
    assertThat(Wbgt.caution(28, false, CONSTANTS)).isEqualTo(Caution.STRONG);
  }

  @Test
  void anEstimateMustBeThreeDegreesHigher() {
    assertThat(Wbgt.caution(24.9, true, CONSTANTS)).isEqualTo(Caution.NONE);
    assertThat(Wbgt.caution(25, true, CONSTANTS)).isEqualTo(Caution.NOTE);
    assertThat(Wbgt.caution(28, true, CONSTANTS)).isEqualTo(Caution.CAUTION);
    assertThat(Wbgt.caution(31, true, CONSTANTS)).isEqualTo(Caution.STRONG);
    assertThat(Wbgt.caution(Double.NaN, true, CONSTANTS)).isEqualTo(Caution.NONE);
  }

  private static Heat heat(double wbgt) {
    return Wbgt.heat(wbgt, CONSTANTS);
  }
}
