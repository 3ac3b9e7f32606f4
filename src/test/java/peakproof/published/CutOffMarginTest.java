package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.CutOffMargin;
import peakproof.measure.ShippedConstants;

/**
 * Cut-off margins: limits come from the event's own sheet (2:00 and 2:20 for a full-distance swim
 * are usual), an allowance for navigation and the tenth that is thin are common practice, no
 * source. Values are arithmetic to the digits shown.
 */
class CutOffMarginTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final double PROJECTED = 38 * 170 * 1.03;

  @Test
  void slowSwimAgainstTwoHours() {
    assertThat(PROJECTED).isCloseTo(6654, within(0.5));
    CutOffMargin margin = CutOffMargin.of(2 * 3600, PROJECTED);
    assertThat(margin.seconds().value()).isCloseTo(9 * 60 + 6, within(0.5));
    assertThat(margin.share().value()).isCloseTo(0.076, within(0.0005));
    assertThat(margin.thin(CONSTANTS)).isTrue();
  }

  @Test
  void theSameSwimAgainstTwoHoursTwenty() {
    CutOffMargin margin = CutOffMargin.of(140 * 60, PROJECTED);
    assertThat(margin.share().value()).isCloseTo(0.208, within(0.0005));
    assertThat(margin.thin(CONSTANTS)).isFalse();
  }

  @Test
  void aTenthIsNotThinAndPastTheLimitIsNegative() {
    assertThat(CutOffMargin.of(1000, 900).thin(CONSTANTS)).isFalse();
    assertThat(CutOffMargin.of(1000, 901).thin(CONSTANTS)).isTrue();
    assertThat(CutOffMargin.of(1000, 1100).seconds().value()).isEqualTo(-100);
  }

  @Test
  void nothingIsLeftOfNoLimitAndOfNoTime() {
    for (double none : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertUnknown(CutOffMargin.of(none, PROJECTED));
      assertUnknown(CutOffMargin.of(7200, none));
    }
    assertUnknown(CutOffMargin.of(0, PROJECTED));
    assertThat(CutOffMargin.of(7200, 0).share().value()).isEqualTo(1);
  }

  /** Time over limit is past what a double holds, the seconds are not. */
  @Test
  void aShareOfALimitNextToNothingIsUnknownAndTheSecondsAreNot() {
    CutOffMargin margin = CutOffMargin.of(Double.MIN_VALUE, 1000);
    assertThat(margin.seconds().value()).isEqualTo(-1000);
    assertThat(margin.share().known()).isFalse();
    assertThat(margin.thin(CONSTANTS)).isNull();
  }

  private static void assertUnknown(CutOffMargin margin) {
    assertThat(margin.seconds().known()).isFalse();
    assertThat(margin.share().because()).isEqualTo("a limit and a projected time");
    assertThat(margin.thin(CONSTANTS)).isNull();
  }
}
