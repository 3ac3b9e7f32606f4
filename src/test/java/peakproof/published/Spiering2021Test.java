package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;
import peakproof.measure.StrengthDose;

/**
 * Spiering BA et al. 2021, J Strength Cond Res, doi 10.1519/JSC.0000000000003964: one session a
 * week kept strength in the young, later in life it may take two. 15 min and 60 years are common
 * practice, no source.
 */
class Spiering2021Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void twice15MinutesAreEnoughUnder60() {
    StrengthDose dose = dose(45.0, 15.0, 15.0);
    assertThat(dose.minutes().value()).isEqualTo(30);
    assertThat(dose.enough()).isTrue();
    assertThat(dose(62.0, 15.0, 15.0).enough()).isTrue();
  }

  @Test
  void once15MinutesAre62YearsTooFew() {
    assertThat(dose(62.0, 15.0).enough()).isFalse();
    assertThat(dose(60.0, 15.0).enough()).isFalse();
    assertThat(dose(59.9, 15.0).enough()).isTrue();
  }

  @Test
  void ageMattersOnlyForOneSession() {
    assertThat(dose(null).enough()).isFalse();
    assertThat(dose(null, 15.0).enough()).isNull();
    assertThat(dose(null, 15.0, 15.0).enough()).isTrue();
    assertThat(dose(Double.NaN, 15.0).enough()).isNull();
  }

  @Test
  void shortSessionsDoNotCountAndUnknownOnesMay() {
    assertThat(dose(40.0, 14.9).enough()).isFalse();
    assertThat(dose(40.0, 14.9).sessions()).isZero();
    assertThat(dose(40.0, (Double) null).enough()).isNull();
    assertThat(dose(40.0, null, 20.0).enough()).isTrue();
    assertThat(dose(40.0, null, 20.0).minutes().because()).contains("length");
    assertThat(dose(40.0, -20.0).enough()).isNull();
    assertThat(dose(40.0, 20.0, 30.0).sessions()).isEqualTo(2);
  }

  private static StrengthDose dose(Double age, Double... minutes) {
    return StrengthDose.of(Arrays.asList(minutes), age, CONSTANTS);
  }
}
