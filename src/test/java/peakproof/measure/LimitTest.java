package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LimitTest {
  private static final double TOLERANCE = 1e-9;

  @Test
  void atALimitGiveOrTakeTheToleranceIsNotPastIt() {
    assertThat(Limit.above(TOLERANCE, 0)).isFalse();
    assertThat(Limit.above(2 * TOLERANCE, 0)).isTrue();
    assertThat(Limit.below(-TOLERANCE, 0)).isFalse();
    assertThat(Limit.below(-2 * TOLERANCE, 0)).isTrue();
    assertThat(Limit.within(-TOLERANCE, 0, 1)).isTrue();
    assertThat(Limit.within(-2 * TOLERANCE, 0, 1)).isFalse();
    assertThat(Limit.within(TOLERANCE, -1, 0)).isTrue();
    assertThat(Limit.within(2 * TOLERANCE, -1, 0)).isFalse();
  }

  @Test
  void zeroCountsAndIsNotPositiveAndInfinityIsNeither() {
    assertThat(Limit.positive(0)).isFalse();
    assertThat(Limit.positive(Double.MIN_VALUE)).isTrue();
    assertThat(Limit.countable(0)).isTrue();
    assertThat(Limit.countable(-Double.MIN_VALUE)).isFalse();
    assertThat(Limit.positive(Double.POSITIVE_INFINITY)).isFalse();
    assertThat(Limit.countable(Double.POSITIVE_INFINITY)).isFalse();
  }

  @Test
  void whatIsNoNumberIsNowhere() {
    assertThat(Limit.above(Double.NaN, 0)).isFalse();
    assertThat(Limit.below(Double.NaN, 0)).isFalse();
    assertThat(Limit.within(Double.NaN, 0, 1)).isFalse();
    assertThat(Limit.positive(Double.NaN)).isFalse();
    assertThat(Limit.countable(Double.NaN)).isFalse();
  }
}
