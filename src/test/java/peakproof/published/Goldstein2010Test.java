package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Carbohydrate;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;

/**
 * Goldstein ER et al. 2010, J Int Soc Sports Nutr 7:5: 3 to 6 mg/kg of caffeine in total. Plain
 * products. To be practised, and less is safer.
 */
class Goldstein2010Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void seventyKilograms() {
    assertThat(Carbohydrate.caffeine(70, CONSTANTS).from()).isCloseTo(210, within(1e-9));
    assertThat(Carbohydrate.caffeine(70, CONSTANTS).to()).isCloseTo(420, within(1e-9));
    assertThat(Carbohydrate.caffeine(0, CONSTANTS).because()).contains("mass");
  }
}
