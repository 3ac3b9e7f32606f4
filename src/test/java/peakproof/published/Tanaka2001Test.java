package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.HeartRateRange;
import peakproof.measure.ShippedConstants;

/**
 * Tanaka H et al. 2001, J Am Coll Cardiol 37:153 (from memory): maximum heart rate is about 208
 * less 0.7 a year; individuals lie 10 to 12 beats off, so that it stays marked as an estimate.
 */
class Tanaka2001Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void fortyYearsGive180() {
    HeartRateRange range = HeartRateRange.of(50.0, null, 40.0, CONSTANTS);
    assertThat(range.maximum()).isCloseTo(180, within(1e-9));
    assertThat(range.estimated()).isTrue();
    assertThat(range.because()).isEmpty();
  }

  @Test
  void aMeasuredMaximumWins() {
    HeartRateRange range = HeartRateRange.of(50.0, 191.0, 40.0, CONSTANTS);
    assertThat(range.maximum()).isEqualTo(191);
    assertThat(range.estimated()).isFalse();
  }

  @Test
  void anAgeThatIsNoneGivesNothing() {
    HeartRateRange range = HeartRateRange.of(50.0, null, 200.0, CONSTANTS);
    assertThat(range.maximum()).isNull();
    assertThat(range.estimated()).isFalse();
  }
}
