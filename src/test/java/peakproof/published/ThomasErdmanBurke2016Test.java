package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Carbohydrate;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;

/**
 * Thomas DT, Erdman KA, Burke LM 2016, Med Sci Sports Exerc 48:543 (from memory): 10 to 12 g/kg a
 * day before more than 90 min, 1 to 4 g/kg in the hours before. Plain products.
 */
class ThomasErdmanBurke2016Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void loadingOf70Kilograms() {
    assertThat(Carbohydrate.loading(70, CONSTANTS).from()).isCloseTo(700, within(1e-9));
    assertThat(Carbohydrate.loading(70, CONSTANTS).to()).isCloseTo(840, within(1e-9));
  }

  @Test
  void mealBeforeOf70Kilograms() {
    assertThat(Carbohydrate.mealBefore(70, CONSTANTS).from()).isCloseTo(70, within(1e-9));
    assertThat(Carbohydrate.mealBefore(70, CONSTANTS).to()).isCloseTo(280, within(1e-9));
  }

  @Test
  void unknownWithoutAMass() {
    assertThat(Carbohydrate.loading(0, CONSTANTS).from()).isNull();
    assertThat(Carbohydrate.mealBefore(-1, CONSTANTS).to()).isNull();
    assertThat(Carbohydrate.loading(Double.NaN, CONSTANTS).because()).contains("mass");
    assertThat(Carbohydrate.loading(1e308, CONSTANTS).because()).contains("too large");
  }
}
