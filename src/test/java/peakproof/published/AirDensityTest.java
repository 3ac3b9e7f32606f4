package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.AirDensity;

/**
 * The gas law with 287.058 J/(kg K) for dry air: 1.2250 kg/m³ at 15 °C and 101 325 Pa is the
 * standard atmosphere's value at sea level (ISO 2533). Four decimals, half of the last the
 * tolerance.
 */
class AirDensityTest {
  @Test
  void seaLevel() {
    assertThat(AirDensity.of(15, 101_325).value()).isCloseTo(1.2250, within(0.00005));
    assertThat(AirDensity.of(30, 101_325).value()).isCloseTo(1.1644, within(0.00005));
  }

  @Test
  void unknownOutsideOutdoorAir() {
    assertThat(AirDensity.of(-60, 30_000).known()).isTrue();
    assertThat(AirDensity.of(60, 120_000).known()).isTrue();
    assertThat(AirDensity.of(-61, 101_325).known()).isFalse();
    assertThat(AirDensity.of(61, 101_325).known()).isFalse();
    assertThat(AirDensity.of(15, 1013).known()).isFalse();
    assertThat(AirDensity.of(15, 120_001).because()).contains("outdoor air");
  }
}
