package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import peakproof.measure.DomainMinutes;
import peakproof.measure.ZoneLoad;

/**
 * Lucía A et al. 2003, Med Sci Sports Exerc 35:872 (from memory): minutes in the three domains
 * times 1, 2 and 3. A plain sum, hence exact.
 */
class Lucia2003Test {
  @Test
  void minutesTimesDomain() {
    assertThat(ZoneLoad.threeZones(new DomainMinutes(40.0, 15.0, 5.0, 0.0)).value()).isEqualTo(85);
  }

  @Test
  void unknownWhilePartOfTheTimeHasNoDomain() {
    assertThat(ZoneLoad.threeZones(new DomainMinutes(40.0, 15.0, 5.0, 1.0)).value()).isNull();
    assertThat(ZoneLoad.threeZones(new DomainMinutes(40.0, 15.0, 5.0, null)).value()).isNull();
    assertThat(ZoneLoad.threeZones(new DomainMinutes(40.0, null, 5.0, 0.0)).value()).isNull();
    assertThat(ZoneLoad.threeZones(new DomainMinutes(40.0, 15.0, 5.0, Double.NaN)).value())
        .isNull();
  }
}
