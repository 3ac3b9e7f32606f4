package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CoverageTest {
  @Test
  void isEnoughFromTheLeastShareOn() {
    assertThat(enough(7, 10, 0.7)).isTrue();
    assertThat(enough(6, 10, 0.7)).isFalse();
    assertThat(enough(0, 0, 0.7)).isFalse();
  }

  /** 25 * 0.28 is a little more than 7, and 10 * (1 - 0.9) a little less than 1. */
  @Test
  void isEnoughExactlyAtAShareThatDoublesCannotHold() {
    assertThat(enough(7, 25, 0.28)).isTrue();
    assertThat(enough(9, 10, 0.9)).isTrue();
    assertThat(enough(8, 10, 0.9)).isFalse();
  }

  private static boolean enough(int known, int days, double least) {
    Constants constants = ShippedConstants.with(Constant.COVERAGE_LEAST, least);
    return new Coverage(known, days).enough(constants);
  }
}
