package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;
import peakproof.measure.Wbgt;

/** ISO 7243: the weights of the three temperatures outdoors. Arithmetic to a tenth. */
class Iso7243Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void threeTemperatures() {
    assertThat(Wbgt.measured(22, 38, 29, CONSTANTS).value()).isCloseTo(25.9, within(0.05));
    // each weight by itself
    assertThat(Wbgt.measured(10, 0, 0, CONSTANTS).value()).isCloseTo(7, within(1e-9));
    assertThat(Wbgt.measured(0, 10, 0, CONSTANTS).value()).isCloseTo(2, within(1e-9));
    assertThat(Wbgt.measured(0, 0, 10, CONSTANTS).value()).isCloseTo(1, within(1e-9));
  }

  @Test
  void unknownWithoutAllThree() {
    assertThat(Wbgt.measured(Double.NaN, 38, 29, CONSTANTS).value()).isNull();
    assertThat(Wbgt.measured(22, 71, 29, CONSTANTS).value()).isNull();
    assertThat(Wbgt.measured(22, 38, -61, CONSTANTS).because()).contains("three");
  }
}
