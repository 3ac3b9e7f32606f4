package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;
import peakproof.measure.Sweat;
import peakproof.measure.Sweat.Weighing;

/**
 * Mass balance before and after a session; 22.99 mg of sodium are a millimole. That a gain of mass
 * is the red flag: consensus on exercise-associated hyponatraemia 2015, Clin J Sport Med 25:303.
 * Values are arithmetic to the digits shown; limits on planned drinking are common practice.
 */
class SweatTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void ninetyMinutesFrom72Kilograms() {
    Sweat sweat = Sweat.of(new Weighing(72.0, 70.6, 0.75, 0.10, 1.5));
    assertThat(sweat.litresAnHour().value()).isCloseTo(1.367, within(0.0005));
    assertThat(100 * sweat.massLost().value()).isCloseTo(1.94, within(0.005));
    assertThat(sweat.gained()).isFalse();
    assertThat(sweat.atMost()).isFalse();
  }

  @Test
  void fourLitresInFiveHoursAreAGain() {
    Sweat sweat = Sweat.of(new Weighing(62.0, 62.6, 4, 0.0, 5));
    assertThat(sweat.litresAnHour().value()).isCloseTo(0.68, within(1e-9));
    assertThat(100 * sweat.massLost().value()).isCloseTo(-0.97, within(0.005));
    assertThat(sweat.gained()).isTrue();
  }

  @Test
  void equalMassIsNoGain() {
    assertThat(Sweat.of(new Weighing(62.0, 62.0, 1, 0.0, 1)).gained()).isFalse();
  }

  @Test
  void unknownUrineLeavesAnUpperBound() {
    Sweat sweat = Sweat.of(new Weighing(72.0, 70.6, 0.75, null, 1.5));
    assertThat(sweat.litresAnHour().value()).isCloseTo(2.15 / 1.5, within(1e-9));
    assertThat(sweat.atMost()).isTrue();
  }

  @Test
  void weighingsThatDoNotFitTogetherGiveNoRate() {
    Sweat impossible = Sweat.of(new Weighing(70, 71, 0.5, 0.0, 1));
    assertThat(impossible.litresAnHour().because()).contains("fit together");
    assertThat(impossible.gained()).isTrue();
    assertThat(Sweat.of(new Weighing(70, 70.5, 0.5, 0.0, 1)).litresAnHour().value())
        .isCloseTo(0, within(1e-9));
    assertUnknown(new Weighing(0, 70, 0.5, 0.0, 1));
    assertUnknown(new Weighing(70, 0, 0.5, 0.0, 1));
    assertUnknown(new Weighing(70, 70, -0.5, 0.0, 1));
    assertUnknown(new Weighing(70, 70, 0.5, -1.0, 1));
    assertUnknown(new Weighing(70, 70, 0.5, 0.0, 0));
  }

  @Test
  void sodiumOfAMeasuredConcentration() {
    Sweat.Sodium sodium = Sweat.sodium(1.2, 40, CONSTANTS);
    assertThat(sodium.millimoles().value()).isCloseTo(48, within(1e-9));
    assertThat(sodium.milligrams().value()).isCloseTo(1104, within(0.5));
    assertThat(Sweat.sodium(1.2, 150, CONSTANTS).millimoles().value()).isCloseTo(180, within(1e-9));
    assertThat(Sweat.sodium(1.2, 151, CONSTANTS).millimoles().value()).isNull();
    assertThat(Sweat.sodium(-1, 40, CONSTANTS).milligrams().value()).isNull();
  }

  @Test
  void planningToDrinkMoreThanIsSweatedIsTheLimit() {
    assertThat(Sweat.drinkLimit(0.6, false, CONSTANTS)).isEqualTo(0.6);
    assertThat(Sweat.drinkLimit(1.4, true, CONSTANTS)).isEqualTo(1.4);
    assertThat(Sweat.drinkLimit(null, false, CONSTANTS)).isEqualTo(1.0);
    assertThat(Sweat.drinkLimit(null, true, CONSTANTS)).isEqualTo(0.8);
    assertThat(Sweat.drinkLimit(Double.NaN, true, CONSTANTS)).isEqualTo(0.8);
  }

  private static void assertUnknown(Weighing weighing) {
    assertThat(Sweat.of(weighing).litresAnHour().value()).isNull();
    assertThat(Sweat.of(weighing).massLost().value()).isNull();
    assertThat(Sweat.of(weighing).gained()).isFalse();
  }
}
