package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.ImpulseResponse;
import peakproof.measure.ShippedConstants;

/**
 * Banister EW et al. 1975, Aust J Sports Med 7:57, and Morton RH et al. 1990, J Appl Physiol
 * 69:1171: the impulse-response model with time constants of 45 and 15 days and gains of 1 and 2
 * (from memory); marks after Fitz-Clark JR et al. 1991 (from memory); fitted constants of Clarke
 * DC, Skiba PF 2013, doi 10.1152/advan.00078.2011. Values are arithmetic from the recursion, each
 * version held against doing nothing; half of the last digit is the tolerance.
 */
class Banister1975Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void oneImpulseOf100() {
    ImpulseResponse fortnight = impulse(14);
    assertThat(fortnight.fitness().value()).isCloseTo(73.263, within(0.0005));
    assertThat(fortnight.fatigue().value()).isCloseTo(39.324, within(0.0005));
    assertThat(fortnight.performance().value()).isCloseTo(-5.385, within(0.0005));
    assertThat(impulse(15).performance().value()).isCloseTo(-1.923, within(0.0005));
    assertThat(impulse(21).performance().value()).isCloseTo(13.390, within(0.0005));
    assertThat(impulse(45).performance().value()).isCloseTo(26.831, within(0.0005));
  }

  @Test
  void marks() {
    assertThat(ImpulseResponse.costlyWithin(CONSTANTS).value()).isCloseTo(15.60, within(0.005));
    assertThat(ImpulseResponse.mostUsefulAt(CONSTANTS).value()).isCloseTo(40.31, within(0.005));
    Constants runner = model(60, 13, 0.07, 0.27);
    assertThat(ImpulseResponse.costlyWithin(runner).value()).isCloseTo(22.40, within(0.005));
    assertThat(ImpulseResponse.mostUsefulAt(runner).value()).isCloseTo(47.78, within(0.005));
    Constants cyclist = model(36, 21, 0.18, 0.23);
    assertThat(ImpulseResponse.costlyWithin(cyclist).value()).isCloseTo(12.35, within(0.005));
    assertThat(ImpulseResponse.mostUsefulAt(cyclist).value()).isCloseTo(39.52, within(0.005));
  }

  @Test
  void noMarksOfAModelInWhichALoadNeverCosts() {
    assertThat(ImpulseResponse.costlyWithin(model(45, 15, 2, 1)).value()).isNull();
    assertThat(ImpulseResponse.mostUsefulAt(model(20, 40, 1, 2)).value()).isNull();
    assertThat(ImpulseResponse.costlyWithin(model(20, 20, 1, 2)).because()).contains("constants");
    assertThat(ImpulseResponse.costlyWithin(model(45, 15, 1, 1)).value()).isEqualTo(0);
  }

  @Test
  void steadyStateOf100ADay() {
    ImpulseResponse steady = alone(days(5000, day -> 100));
    assertThat(steady.fitness().value()).isCloseTo(4450.19, within(0.005));
    assertThat(steady.fatigue().value()).isCloseTo(1450.56, within(0.005));
    assertThat(steady.performance().value()).isCloseTo(1549.07, within(0.005));
  }

  @Test
  void fourWeeksAndThenRest() {
    assertThat(afterRest(0)).isCloseTo(-390.94, within(0.005));
    assertThat(afterRest(7)).isCloseTo(226.63, within(0.005));
    assertThat(afterRest(14)).isCloseTo(545.94, within(0.005));
    assertThat(afterRest(21)).isCloseTo(688.00, within(0.005));
  }

  @Test
  void eightWeeksAndThenTapersOfAFortnight() {
    // 637.04 is cut, not rounded: the sum of the two geometric series is 637.0451
    assertThat(afterTaper(k -> 100)).isCloseTo(637.0451, within(0.00005));
    assertThat(afterTaper(k -> 50)).isCloseTo(922.27, within(0.005));
    assertThat(afterTaper(k -> 100 * (1 - k / 14.0))).isCloseTo(1046.26, within(0.005));
    assertThat(afterTaper(k -> 100 * Math.exp(-k / 8.0))).isCloseTo(1028.83, within(0.005));
    assertThat(afterTaper(k -> 100 * Math.exp(-k / 5.0))).isCloseTo(1109.12, within(0.005));
    // complete rest wins, which is why the model recommends nothing
    assertThat(afterTaper(k -> 0)).isCloseTo(1207.49, within(0.005));
  }

  @Test
  void agreesWithTheSumWrittenOutAndIsLinear() {
    Random random = new Random(1975);
    for (int run = 0; run < 1000; run++) {
      int length = 28 + random.nextInt(60);
      double[] one = random.doubles(length, 0, 900).toArray();
      double[] other = random.doubles(length, 0, 900).toArray();
      ImpulseResponse compared = ImpulseResponse.compared(list(one, 1), list(other, 1), CONSTANTS);
      double fitness = writtenOut(one, 45) - writtenOut(other, 45);
      double fatigue = writtenOut(one, 15) - writtenOut(other, 15);
      assertThat(compared.fitness().value()).isCloseTo(fitness, within(1e-6));
      assertThat(compared.fatigue().value()).isCloseTo(fatigue, within(1e-6));
      assertThat(compared.performance().value()).isCloseTo(fitness - 2 * fatigue, within(1e-6));
      assertThat(
              ImpulseResponse.compared(list(one, 2), list(other, 2), CONSTANTS)
                  .performance()
                  .value())
          .isCloseTo(2 * compared.performance().value(), within(1e-6));
      assertThat(
              ImpulseResponse.compared(list(other, 1), list(one, 1), CONSTANTS)
                  .performance()
                  .value())
          .isCloseTo(-compared.performance().value(), within(1e-6));
    }
  }

  @Test
  void comparesOnlyVersionsOfTheSame28DaysOrMore() {
    List<Double> days = days(28, day -> 10);
    assertThat(ImpulseResponse.compared(days, days, CONSTANTS).performance().value()).isEqualTo(0);
    assertThat(
            ImpulseResponse.compared(days, days(29, day -> 10), CONSTANTS).performance().because())
        .contains("28 days");
    List<Double> few = days(27, day -> 10);
    assertThat(ImpulseResponse.compared(few, few, CONSTANTS).fitness().value()).isNull();
  }

  @Test
  void anUnknownDayLeavesNothingToCompare() {
    List<Double> days = days(28, day -> 10);
    List<Double> hole = new ArrayList<>(days);
    hole.set(3, null);
    assertThat(ImpulseResponse.compared(days, hole, CONSTANTS).fatigue().because())
        .contains("every day");
    assertThat(ImpulseResponse.compared(hole, days, CONSTANTS).fatigue().value()).isNull();
    hole.set(3, -1.0);
    assertThat(ImpulseResponse.compared(hole, days, CONSTANTS).fatigue().value()).isNull();
  }

  private static Constants model(double slow, double fast, double helps, double hinders) {
    return ShippedConstants.with(
        Map.of(
            Constant.RESPONSE_FITNESS_DAYS, slow,
            Constant.RESPONSE_FATIGUE_DAYS, fast,
            Constant.RESPONSE_FITNESS_GAIN, helps,
            Constant.RESPONSE_FATIGUE_GAIN, hinders));
  }

  private static double writtenOut(double[] loads, double timeConstant) {
    double sum = 0;
    for (int day = 0; day < loads.length; day++) {
      sum += loads[day] * Math.exp(-(loads.length - day) / timeConstant);
    }
    return sum;
  }

  /** Felt so many days after the only load. */
  private static ImpulseResponse impulse(int after) {
    return alone(days(60, day -> day == 60 - after ? 100 : 0));
  }

  private static double afterRest(int rest) {
    return alone(days(28 + rest, day -> day < 28 ? 100 : 0)).performance().value();
  }

  private static double afterTaper(IntToDoubleFunction taper) {
    return alone(days(70, day -> day < 56 ? 100 : taper.applyAsDouble(day - 55)))
        .performance()
        .value();
  }

  private static ImpulseResponse alone(List<Double> days) {
    return ImpulseResponse.compared(days, Collections.nCopies(days.size(), 0.0), CONSTANTS);
  }

  private static List<Double> days(int count, IntToDoubleFunction load) {
    List<Double> days = new ArrayList<>();
    for (int day = 0; day < count; day++) {
      days.add(load.applyAsDouble(day));
    }
    return days;
  }

  private static List<Double> list(double[] loads, double times) {
    return Arrays.stream(loads).map(load -> times * load).boxed().toList();
  }
}
