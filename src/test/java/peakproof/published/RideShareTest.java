package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.DistanceClass;
import peakproof.measure.RideShare;
import peakproof.measure.ShippedConstants;

/** Shares of critical power for the bike leg: common practice, no source. */
class RideShareTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void bandsOfTheDistances() {
    assertBand(DistanceClass.FULL, 0.65, 0.78);
    assertBand(DistanceClass.HALF, 0.75, 0.85);
    assertBand(DistanceClass.STANDARD, 0.85, 0.95);
    assertBand(DistanceClass.SPRINT, 0.92, 1.02);
  }

  @Test
  void whatIsNoNumberIsBelow() {
    assertThat(RideShare.of(Double.NaN, DistanceClass.FULL, CONSTANTS)).isEqualTo(RideShare.BELOW);
    assertThat(RideShare.of(-1, DistanceClass.FULL, CONSTANTS)).isEqualTo(RideShare.BELOW);
  }

  private static void assertBand(DistanceClass distance, double from, double to) {
    assertThat(RideShare.band(distance, CONSTANTS).from()).isCloseTo(from, within(1e-12));
    assertThat(RideShare.band(distance, CONSTANTS).to()).isCloseTo(to, within(1e-12));
    assertThat(RideShare.of(from - 0.001, distance, CONSTANTS)).isEqualTo(RideShare.BELOW);
    assertThat(RideShare.of(from, distance, CONSTANTS)).isEqualTo(RideShare.WITHIN);
    assertThat(RideShare.of(to, distance, CONSTANTS)).isEqualTo(RideShare.WITHIN);
    assertThat(RideShare.of(to + 0.001, distance, CONSTANTS)).isEqualTo(RideShare.ABOVE);
  }
}
