package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.EnduranceTime;
import peakproof.measure.Pace;
import peakproof.measure.ShippedConstants;

/**
 * Riegel PS 1981, American Scientist 69(3):285-290 (formula and exponent 1.06 from memory). The
 * times are arithmetic from the formula, given to the second or tenth; half of the last digit is
 * the tolerance. That the marathon comes out at least ten minutes too fast for half of recreational
 * runners: Vickers and Vertosick 2016, doi 10.1186/s13102-016-0052-y; the cautious exponent of 1.10
 * is common practice.
 */
class Riegel1981Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final double HALF = Pace.MARATHON / 2;

  @Test
  void fiveKilometresToTen() {
    assertThat(EnduranceTime.scaled(5000, 20 * 60, 10_000, 1.06).value())
        .isCloseTo(41 * 60 + 41.9, within(0.05));
  }

  @Test
  void tenKilometresToMarathon() {
    assertThat(EnduranceTime.scaled(10_000, 40 * 60, Pace.MARATHON, 1.06).value())
        .isCloseTo(3 * 3600 + 4 * 60 + 0.5, within(0.05));
  }

  @Test
  void halfMarathonToMarathonByBothExponents() {
    double half = 95 * 60;
    assertThat(EnduranceTime.scaled(HALF, half, Pace.MARATHON, 1.06).value())
        .isCloseTo(3 * 3600 + 18 * 60 + 4, within(0.5));
    assertThat(EnduranceTime.scaled(HALF, half, Pace.MARATHON, 1.10).value())
        .isCloseTo(3 * 3600 + 23 * 60 + 38, within(0.5));
  }

  @Test
  void personalExponentOfTwoRaces() {
    assertThat(EnduranceTime.personalExponent(10_000, 40 * 60, HALF, 89 * 60, CONSTANTS))
        .isCloseTo(1.0712, within(0.00005));
  }

  @Test
  void personalExponentOutsideItsRangeIsRefused() {
    assertThat(EnduranceTime.personalExponent(10_000, 2400, 20_000, 2400 * 2.0, CONSTANTS))
        .isNull();
    assertThat(EnduranceTime.personalExponent(10_000, 2400, 20_000, 2400 * 2.5, CONSTANTS))
        .isNull();
    assertThat(EnduranceTime.personalExponent(10_000, 2400, 10_000, 2500, CONSTANTS)).isNull();
    double atTheEdge = 2400 * Math.pow(2, 1.02);
    assertThat(EnduranceTime.personalExponent(10_000, 2400, 20_000, atTheEdge, CONSTANTS))
        .isCloseTo(1.02, within(1e-9));
    double atTheOther = 2400 * Math.pow(2, 1.20);
    assertThat(EnduranceTime.personalExponent(10_000, 2400, 20_000, atTheOther, CONSTANTS))
        .isCloseTo(1.20, within(1e-9));
  }

  @Test
  void nothingIsScaledWithoutTwoDistancesAndATime() {
    for (double none : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThat(EnduranceTime.scaled(none, 2400, 20_000, 1.06).known()).isFalse();
      assertThat(EnduranceTime.scaled(10_000, none, 20_000, 1.06).known()).isFalse();
      assertThat(EnduranceTime.scaled(10_000, 2400, none, 1.06).known()).isFalse();
    }
    assertThat(EnduranceTime.scaled(1, Double.MAX_VALUE, 2, 1.06).known()).isFalse();
    assertThat(EnduranceTime.scaled(10_000, 2400, 20_000, Double.NaN).known()).isFalse();
  }
}
