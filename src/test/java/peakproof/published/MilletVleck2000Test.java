package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.BrickPace;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;

/**
 * Millet GP, Vleck VE 2000, Br J Sports Med 34:384, doi 10.1136/bjsm.34.5.384: running after
 * cycling costs 1.6 to 11.6 % more. Paces are arithmetic to a tenth of a second; what to expect
 * within the range is common practice, no source.
 */
class MilletVleck2000Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  /** The marathon in 3:50:00, shown as 5:27.1. */
  private static final double FRESH = 327.053;

  @Test
  void paceOf5Minutes27Point1Fresh() {
    assertThat(BrickPace.of(FRESH, 0.016).value()).isCloseTo(5 * 60 + 32.3, within(0.05));
    assertThat(BrickPace.of(FRESH, 0.05).value()).isCloseTo(5 * 60 + 43.4, within(0.05));
    assertThat(BrickPace.of(FRESH, 0.116).value()).isCloseTo(6 * 60 + 5.0, within(0.05));
  }

  @Test
  void expectationsLieWithinThePublishedRange() {
    double shortRide = BrickPace.cost(false, false, CONSTANTS);
    double longRide = BrickPace.cost(true, false, CONSTANTS);
    double novice = BrickPace.cost(false, true, CONSTANTS);
    assertThat(shortRide).isEqualTo(0.03);
    assertThat(longRide).isEqualTo(0.05);
    assertThat(novice).isEqualTo(0.10).isEqualTo(BrickPace.cost(true, true, CONSTANTS));
    assertThat(shortRide).isBetween(0.016, 0.116);
    assertThat(novice).isBetween(0.016, 0.116);
  }

  @Test
  void unknownWithoutAPace() {
    assertThat(BrickPace.of(0, 0.05).value()).isNull();
    assertThat(BrickPace.of(FRESH, -0.01).value()).isNull();
    assertThat(BrickPace.of(FRESH, 1.01).because()).contains("fresh pace");
    assertThat(BrickPace.of(FRESH, 0).value()).isEqualTo(FRESH);
  }
}
