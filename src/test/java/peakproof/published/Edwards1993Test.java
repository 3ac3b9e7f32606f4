package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;
import peakproof.measure.ZoneLoad;

/**
 * Edwards S 1993 (from memory): minutes in the five tenths from 50 % of the maximum heart rate on,
 * times 1 to 5. Plain sums, hence exact.
 */
class Edwards1993Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void minutesTimesZone() {
    assertThat(load(10, 30, 15, 5, 0)).isEqualTo(135);
    assertThat(load(30, 120, 60, 20, 10)).isEqualTo(580);
    assertThat(load(0, 0, 0, 0, 0)).isEqualTo(0);
  }

  @Test
  void lowerBoundsBelongToTheZoneAndTheTopHoldsAllAbove() {
    assertThat(zone(0.499)).isZero();
    assertThat(zone(0.50)).isEqualTo(1);
    assertThat(zone(0.599)).isEqualTo(1);
    assertThat(zone(0.60)).isEqualTo(2);
    assertThat(zone(0.70)).isEqualTo(3);
    assertThat(zone(0.80)).isEqualTo(4);
    assertThat(zone(0.90)).isEqualTo(5);
    assertThat(zone(1.02)).isEqualTo(5);
    assertThat(zone(Double.NaN)).isZero();
    assertThat(zone(-1)).isZero();
  }

  @Test
  void anHourBelowHalfOfTheMaximumWeighsNothing() {
    assertThat(60.0 * zone(0.45)).isZero();
  }

  @Test
  void unknownWithoutTheMinutesOfEveryZone() {
    assertThat(ZoneLoad.fiveZones(List.of(1.0, 2.0)).value()).isNull();
    assertThat(ZoneLoad.fiveZones(Arrays.asList(1.0, null, 1.0, 1.0, 1.0)).value()).isNull();
    assertThat(ZoneLoad.fiveZones(List.of(1.0, -1.0, 1.0, 1.0, 1.0)).because())
        .contains("every zone");
  }

  private static int zone(double share) {
    return ZoneLoad.zone(share, CONSTANTS);
  }

  private static Double load(double... minutes) {
    return ZoneLoad.fiveZones(Arrays.stream(minutes).boxed().toList()).value();
  }
}
