package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;
import peakproof.measure.TaperLength;
import peakproof.measure.TaperReduction;
import peakproof.measure.TaperShape;
import peakproof.measure.WeekVolume;

/**
 * Taper shapes over 14 days after Bosquet L et al. 2007, doi 10.1249/mss.0b013e31806010e0 (step,
 * linear and exponential cuts of volume; 41 to 60 % did best), and Banister EW, Carter JB, Zarkadas
 * PC 1999, Eur J Appl Physiol 79:182 (exponential with time constants of 4 and 8 days). The
 * reductions are arithmetic from the shapes, to a hundredth of a per cent. Where a taper begins is
 * common practice, no source.
 */
class TaperReductionTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final double BASE = 100;
  private static final int DAYS = 14;
  private static final LocalDate MONDAY = LocalDate.of(2027, 5, 31);
  private static final LocalDate RACE = MONDAY.plusDays(19);

  @Test
  void shapes() {
    assertShape(new TaperShape.Step(0.5), 0.500);
    assertShape(new TaperShape.Linear(1), 0.5357);
    assertShape(new TaperShape.Linear(0.6), 0.3214);
    assertShape(new TaperShape.Exponential(8), 0.5568);
    assertShape(new TaperShape.Exponential(5), 0.6970);
  }

  @Test
  void weeksOfTheShapes() {
    assertWeeks(new TaperShape.Linear(0.6), 0.829, 0.529);
    assertWeeks(new TaperShape.Exponential(8), 0.626, 0.261);
    assertWeeks(new TaperShape.Exponential(5), 0.486, 0.120);
  }

  @Test
  void noShapeWithoutDaysBaseOrASoundCut() {
    assertThat(new TaperShape.Step(0.5).volumes(BASE, 0)).isEmpty();
    assertThat(new TaperShape.Step(0.5).volumes(0, DAYS)).isEmpty();
    assertThat(new TaperShape.Step(1.1).volumes(BASE, DAYS)).isEmpty();
    assertThat(new TaperShape.Step(1).volumes(BASE, 2)).containsExactly(0.0, 0.0);
    assertThat(new TaperShape.Linear(-0.1).volumes(BASE, DAYS)).isEmpty();
    assertThat(new TaperShape.Linear(1.1).volumes(BASE, DAYS)).isEmpty();
    assertThat(new TaperShape.Exponential(0).volumes(BASE, DAYS)).isEmpty();
    assertThat(new TaperShape.Exponential(Double.NaN).volumes(BASE, DAYS)).isEmpty();
  }

  @Test
  void taperBeginsWithTheFirstWeekOfAtMost85PerCent() {
    assertThat(length(week(1, 86.0), week(8, 85.0), week(15, 50.0)).days()).isEqualTo(12);
    assertThat(length(week(1, 86.0), week(8, 85.0)).onset()).isEqualTo(MONDAY.plusDays(7));
    assertThat(length(week(1, 85.1), week(8, 85.1), week(15, 50.0)).days()).isEqualTo(5);
    assertThat(length(week(1, 40.0), week(8, 90.0)).days()).isEqualTo(19);
  }

  @Test
  void taperLengthIsUnknownWithoutAnOnsetOrWithoutItsWeeks() {
    assertThat(length(week(1, 90.0), week(8, 90.0)).because()).contains("no week");
    assertThat(length(week(1, 90.0), week(8, null), week(15, 20.0)).because()).contains("whole");
    assertThat(length(week(20, 10.0)).days()).isNull();
    assertThat(TaperLength.of(List.of(week(1, 10.0)), weeks(100, 100), RACE, CONSTANTS).because())
        .contains("too few");
    assertThat(TaperLength.of(List.of(week(1, 0.0)), weeks(0, 0, 0, 0), RACE, CONSTANTS).days())
        .isNull();
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
  void aTaperWithoutDaysIsUnknown() {
    assertThat(TaperReduction.of(List.of(), weeks(7, 7, 7, 7), CONSTANTS).because())
        .contains("days of the taper");
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

  private static TaperLength length(TaperLength.Week... taper) {
    return TaperLength.of(List.of(taper), weeks(100, 100, 100, 100), RACE, CONSTANTS);
  }

  private static TaperLength.Week week(int day, Double volume) {
    return new TaperLength.Week(MONDAY.plusDays(day - 1), volume);
  }

  private static void assertWeeks(TaperShape shape, double first, double second) {
    List<Double> days = shape.volumes(1, DAYS);
    assertThat(mean(days.subList(0, 7))).isCloseTo(first, within(0.0005));
    assertThat(mean(days.subList(7, 14))).isCloseTo(second, within(0.0005));
  }

  private static double mean(List<Double> days) {
    return days.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  private static void assertShape(TaperShape shape, double reduction) {
    double week = 7 * BASE;
    TaperReduction taper =
        TaperReduction.of(
            List.copyOf(shape.volumes(BASE, DAYS)), weeks(week, week, week, week), CONSTANTS);
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
