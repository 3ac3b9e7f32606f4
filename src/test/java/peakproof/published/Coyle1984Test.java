package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.Detraining;
import peakproof.measure.ShippedConstants;

/**
 * Coyle EF et al. 1984, J Appl Physiol 57:1857, by secondary text: maximal oxygen uptake of highly
 * trained people after they stop, 7 % lower after 12 days, 14 % after 56, 16 % after 84 (still 7 %
 * after 21: from memory). The smooth form is fitted to the 12 days; its values are arithmetic,
 * given to a tenth of a per cent, half of which is the tolerance.
 */
class Coyle1984Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void smoothForm() {
    assertSmooth(3, 2.1);
    assertSmooth(5, 3.4);
    assertSmooth(7, 4.6);
    assertSmooth(10, 6.1);
    assertSmooth(12, 7.0);
    assertSmooth(14, 7.8);
    assertSmooth(21, 10.2);
    assertSmooth(56, 14.9);
    assertSmooth(84, 15.7);
  }

  @Test
  void tableAtItsOwnDays() {
    assertThat(Detraining.table(3, CONSTANTS)).isEqualTo(0);
    assertThat(Detraining.table(12, CONSTANTS)).isCloseTo(0.07, within(1e-12));
    assertThat(Detraining.table(21, CONSTANTS)).isCloseTo(0.07, within(1e-12));
    assertThat(Detraining.table(56, CONSTANTS)).isCloseTo(0.14, within(1e-12));
    assertThat(Detraining.table(84, CONSTANTS)).isCloseTo(0.16, within(1e-12));
    assertThat(Detraining.table(300, CONSTANTS)).isCloseTo(0.16, within(1e-12));
  }

  @Test
  void rangeHoldsBoth() {
    Detraining threeWeeks = Detraining.of(21, false, CONSTANTS);
    assertThat(threeWeeks.least()).isCloseTo(0.07, within(1e-12));
    assertThat(threeWeeks.most()).isCloseTo(0.102, within(0.0005));
  }

  @Test
  void anotherSportHalvesIt() {
    Detraining stopped = Detraining.of(14, false, CONSTANTS);
    Detraining otherSport = Detraining.of(14, true, CONSTANTS);
    assertThat(otherSport.most()).isCloseTo(stopped.most() / 2, within(1e-12));
    assertThat(otherSport.least()).isCloseTo(stopped.least() / 2, within(1e-12));
  }

  @Test
  void aLongerGapNeverCostsLess() {
    Detraining before = Detraining.of(0, false, CONSTANTS);
    assertThat(before).isEqualTo(new Detraining(0, 0));
    for (int day = 1; day <= 200; day++) {
      Detraining now = Detraining.of(day, false, CONSTANTS);
      assertThat(now.least()).isGreaterThanOrEqualTo(before.least());
      assertThat(now.most()).isGreaterThanOrEqualTo(before.most());
      before = now;
    }
  }

  private static void assertSmooth(double days, double percent) {
    assertThat(100 * Detraining.smooth(days, CONSTANTS)).isCloseTo(percent, within(0.05));
  }
}
