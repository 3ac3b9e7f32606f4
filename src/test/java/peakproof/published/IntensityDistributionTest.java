package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.Domain;
import peakproof.measure.DomainMinutes;
import peakproof.measure.DomainShares;
import peakproof.measure.DomainShares.Name;
import peakproof.measure.ShippedConstants;

/**
 * Intensity distributions as observed: Neal CM et al. 2011 (ten full-distance age-groupers, 69, 25
 * and 6 %); Selles-Perez S et al. 2019, J Sports Sci Med 18:708 (half distance, 84.5, 4.2 and 11.3
 * % against 77.9, 18.8 and 3.3 %). The polarisation index: Treff G et al. 2019 (from memory).
 * Shares and indices are arithmetic to the digits shown.
 */
class IntensityDistributionTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void sharesOfMinutes() {
    DomainShares shares = shares(470, 95, 35, 0);
    assertThat(shares.moderate()).isCloseTo(0.783, within(0.0005));
    assertThat(shares.heavy()).isCloseTo(0.158, within(0.0005));
    assertThat(shares.severe()).isCloseTo(0.058, within(0.0005));
    assertThat(shares.name()).isEqualTo(Name.PYRAMIDAL);
  }

  @Test
  void observedGroupsAreNamedAsTheirAuthorsDo() {
    assertThat(shares(69, 25, 6, 0).name()).isEqualTo(Name.PYRAMIDAL);
    assertThat(shares(84.5, 4.2, 11.3, 0).name()).isEqualTo(Name.POLARISED);
    assertThat(shares(77.9, 18.8, 3.3, 0).name()).isEqualTo(Name.PYRAMIDAL);
  }

  @Test
  void polarisationIndex() {
    assertThat(DomainShares.polarisation(.80, .05, .15, CONSTANTS)).isCloseTo(2.380, within(5e-4));
    assertThat(DomainShares.polarisation(.78, .16, .06, CONSTANTS)).isCloseTo(1.466, within(5e-4));
    assertThat(DomainShares.polarisation(.80, 0, .20, CONSTANTS))
        .isEqualTo(DomainShares.polarisation(.80, .01, .20, CONSTANTS));
    assertThat(DomainShares.polarisation(.40, .20, .40, CONSTANTS))
        .isCloseTo(Math.log10(80), within(1e-12));
    assertThat(DomainShares.polarisation(.20, .30, .50, CONSTANTS)).isNull();
    assertThat(DomainShares.polarisation(.80, .20, 0, CONSTANTS)).isNull();
  }

  @Test
  void mostlyUnclassifiedTimeHasSharesAndNoName() {
    assertThat(shares(10, 0, 0, 90).moderate()).isEqualTo(1);
    assertThat(shares(10, 0, 0, 90).unclassified()).isCloseTo(0.9, within(1e-12));
    assertThat(shares(10, 0, 0, 90).name()).isNull();
  }

  @Test
  void equalSharesHaveNoOrderAndNoName() {
    assertThat(shares(40, 20, 40, 0).name()).isNull();
    assertThat(shares(60, 20, 20, 0).name()).isNull();
    assertThat(shares(34, 34, 32, 0).name()).isNull();
  }

  @Test
  void aWholeSessionLiesInOneDomain() {
    assertThat(DomainMinutes.whole(Domain.MODERATE, 60.0))
        .isEqualTo(new DomainMinutes(60.0, 0.0, 0.0, 0.0));
    assertThat(DomainMinutes.whole(Domain.HEAVY, 60.0))
        .isEqualTo(new DomainMinutes(0.0, 60.0, 0.0, 0.0));
    assertThat(DomainMinutes.whole(Domain.SEVERE, 60.0))
        .isEqualTo(new DomainMinutes(0.0, 0.0, 60.0, 0.0));
    assertThat(DomainMinutes.whole(null, null)).isEqualTo(new DomainMinutes(0.0, 0.0, 0.0, null));
  }

  @Test
  void thresholdHeavyIsPast35Percent() {
    assertThat(shares(60, 35, 5, 0).name()).isEqualTo(Name.PYRAMIDAL);
    assertThat(shares(60, 35.1, 4.9, 0).name()).isEqualTo(Name.THRESHOLD_HEAVY);
  }

  @Test
  void noNameWhenMoreThanAQuarterIsUnclassified() {
    assertThat(shares(50, 20, 5, 25).name()).isEqualTo(Name.PYRAMIDAL);
    DomainShares shares = shares(50, 20, 5, 25.1);
    assertThat(shares.name()).isNull();
    assertThat(shares.moderate()).isCloseTo(50.0 / 75, within(1e-12));
  }

  @Test
  void unknownMinutesGiveUnknownShares() {
    DomainShares unknown = new DomainShares(null, null, null, null, null);
    assertThat(DomainShares.of(new DomainMinutes(null, 1.0, 1.0, 1.0), CONSTANTS))
        .isEqualTo(unknown);
    assertThat(shares(0, 0, 0, 0)).isEqualTo(unknown);
    assertThat(shares(0, 0, 0, 60)).isEqualTo(unknown);
  }

  private static DomainShares shares(double moderate, double heavy, double severe, double other) {
    return DomainShares.of(new DomainMinutes(moderate, heavy, severe, other), CONSTANTS);
  }
}
