package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;
import peakproof.measure.TaperReduction;
import peakproof.measure.WeekVolume;

/**
 * Taper shapes over 14 days after Bosquet L et al. 2007, doi 10.1249/mss.0b013e31806010e0 (step,
 * linear and exponential cuts of volume; 41 to 60 % did best), and Banister EW, Carter JB, Zarkadas
 * PC 1999, Eur J Appl Physiol 79:182 (exponential with time constants of 4 and 8 days). The
 * reductions are arithmetic from the shapes, to a hundredth of a per cent.
 */
class TaperReductionTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final double BASE = 100;
  private static final int DAYS = 14;

  @Test
  void shapes() {
    assertShape(k -> BASE * 0.5, 0.500);
    assertShape(k -> BASE * (1 - (double) k / DAYS), 0.5357);
    assertShape(k -> BASE * (1 - 0.6 * k / DAYS), 0.3214);
    assertShape(k -> BASE * Math.exp(-k / 8.0), 0.5568);
    assertShape(k -> BASE * Math.exp(-k / 5.0), 0.6970);
  }

  @Test
  void lighterWeeksAreLeftOutOfTheReference() {
    List<Double> taper = concat(Double.valueOf(10.0 / 7), Double.valueOf(6.0 / 7));
    // 14, 15, 16 and a lighter 9 h, then 10 and 6 h: 46.7 % without the lighter week, 40.7 with it
    assertThat(reduction(taper, true)).isCloseTo(0.467, within(0.0005));
    assertThat(reduction(taper, false)).isCloseTo(0.407, within(0.0005));
  }

  @Test
  void moreThanBeforeIsANegativeReduction() {
    assertThat(TaperReduction.of(concat(2.0, 2.0), weeks(7, 7, 7, 7), CONSTANTS).reduction())
        .isCloseTo(-1, within(1e-9));
  }

  @Test
  void unknownWithFewerThanThreeKnownWeeks() {
    assertThat(TaperReduction.of(concat(1.0, 1.0), weeks(7, 7), CONSTANTS).reduction()).isNull();
    assertThat(TaperReduction.of(concat(1.0, 1.0), weeks(7, 7, 7), CONSTANTS).reduction())
        .isCloseTo(0, within(1e-9));
    assertThat(TaperReduction.of(concat(1.0, 1.0), weeks(0, 0, 0), CONSTANTS).reduction()).isNull();
  }

  @Test
  void unknownWhenMoreThanThreeTenthsOfTheTaperAreUnknown() {
    List<Double> ten = new ArrayList<>(concat(0.5, 0.5).subList(0, 10));
    ten.set(0, null);
    ten.set(1, null);
    ten.set(2, null);
    assertThat(TaperReduction.of(ten, weeks(7, 7, 7, 7), CONSTANTS).reduction())
        .isCloseTo(0.5, within(1e-9));
    ten.set(3, null);
    assertThat(TaperReduction.of(ten, weeks(7, 7, 7, 7), CONSTANTS).reduction()).isNull();
  }

  private static void assertShape(IntToDoubleFunction day, double reduction) {
    List<Double> days = new ArrayList<>();
    for (int k = 1; k <= DAYS; k++) {
      days.add(day.applyAsDouble(k));
    }
    double week = 7 * BASE;
    TaperReduction taper = TaperReduction.of(days, weeks(week, week, week, week), CONSTANTS);
    assertThat(taper.reduction()).isCloseTo(reduction, within(0.00005));
    assertThat(taper.referenceDay()).isCloseTo(BASE, within(1e-9));
  }

  private static Double reduction(List<Double> taper, boolean lighter) {
    List<WeekVolume> before = new ArrayList<>(weeks(14, 15, 16));
    before.add(new WeekVolume(9.0, lighter));
    return TaperReduction.of(taper, before, CONSTANTS).reduction();
  }

  private static List<Double> concat(Double first, Double second) {
    List<Double> days = new ArrayList<>();
    for (int day = 0; day < DAYS; day++) {
      days.add(day < 7 ? first : second);
    }
    return days;
  }

  private static List<WeekVolume> weeks(double... amounts) {
    return Arrays.stream(amounts).mapToObj(amount -> new WeekVolume(amount, false)).toList();
  }
}
