package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.LoadRatio;
import peakproof.measure.ShippedConstants;

/**
 * Williams S et al. 2017, Br J Sports Med 51:209, doi 10.1136/bjsports-2016-096589: exponentially
 * weighted means of 7 and 28 days. One of its three athletes has 1.25 against a rolling 1.43; a
 * flat pattern of 3 to 5 gives both. Other values are arithmetic to the digits shown. The identity
 * of coupled and uncoupled ratio follows from their definitions.
 */
class Williams2017Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void threeWeeksAt30AndOneAt50() {
    LoadRatio ratio = ratio(days(21, 30.0, 7, 50.0));
    assertThat(ratio.acute().value()).isCloseTo(47.330, within(0.0005));
    assertThat(ratio.chronic().value()).isCloseTo(37.872, within(0.0005));
    assertThat(ratio.weighted().value()).isCloseTo(1.250, within(0.0005));
    assertThat(ratio.coupled().value()).isCloseTo(1.429, within(0.0005));
    assertThat(ratio.uncoupled().value()).isCloseTo(1.667, within(0.0005));
  }

  @Test
  void fourWeeksAt100AndThenTwice() {
    assertThat(ratio(days(28, 100.0, 1, 200.0)).weighted().value())
        .isCloseTo(1.1694, within(0.00005));
    assertThat(ratio(days(28, 100.0, 7, 200.0)).weighted().value())
        .isCloseTo(1.3394, within(0.00005));
  }

  @Test
  void aWeekOfRestLooksAlarmingWhichIsWhyATaperHasNone() {
    List<Double> days = days(28, 100.0, 7, 0.0);
    assertThat(ratio(days).weighted().value()).isCloseTo(0.2201, within(0.00005));
    LoadRatio taper = LoadRatio.of(days, true, CONSTANTS);
    assertThat(taper.weighted().value()).isNull();
    assertThat(taper.coupled().because()).contains("taper");
  }

  @Test
  void coupledFollowsFromUncoupledAndDoublingChangesNeither() {
    Random random = new Random(2017);
    for (int run = 0; run < 1000; run++) {
      List<Double> days = random.doubles(40, 0, 900).boxed().toList();
      LoadRatio ratio = ratio(days);
      double uncoupled = ratio.uncoupled().value();
      assertThat(ratio.coupled().value()).isCloseTo(4 * uncoupled / (uncoupled + 3), within(1e-12));
      LoadRatio doubled = ratio(days.stream().map(load -> 2 * load).toList());
      assertThat(doubled.weighted().value()).isCloseTo(ratio.weighted().value(), within(1e-12));
      assertThat(doubled.coupled().value()).isCloseTo(ratio.coupled().value(), within(1e-12));
      assertThat(doubled.acute().value()).isCloseTo(2 * ratio.acute().value(), within(1e-9));
    }
  }

  @Test
  void agreesWithTheWeightsWrittenOutOnRandomDays() {
    Random random = new Random(28);
    for (int run = 0; run < 1000; run++) {
      double[] days = random.doubles(28 + random.nextInt(60), 0, 900).toArray();
      LoadRatio ratio = ratio(Arrays.stream(days).boxed().toList());
      assertThat(ratio.acute().value()).isCloseTo(writtenOut(days, 7), within(1e-9));
      assertThat(ratio.chronic().value()).isCloseTo(writtenOut(days, 28), within(1e-9));
    }
  }

  @Test
  void needsFourWeeks() {
    assertThat(ratio(days(20, 30.0, 7, 50.0)).weighted().because()).contains("28 days");
    assertThat(ratio(days(21, 30.0, 7, 50.0)).weighted().known()).isTrue();
  }

  @Test
  void anUnknownDayOfTheLastSevenSuppressesIt() {
    List<Double> days = new ArrayList<>(days(28, 30.0, 7, 50.0));
    days.set(28, null);
    assertThat(ratio(days).weighted().because()).contains("not enough recorded days");
    days.set(28, 50.0);
    days.set(27, null);
    assertThat(ratio(days).coupled().known()).isTrue();
  }

  @Test
  void moreThanFourUnknownDaysOf28SuppressIt() {
    List<Double> days = new ArrayList<>(days(28, 30.0, 7, 30.0));
    for (int day : new int[] {7, 9, 11, 13}) {
      days.set(day, null);
    }
    LoadRatio four = ratio(days);
    assertThat(four.coupled().value()).isCloseTo(1, within(1e-12));
    assertThat(four.weighted().value()).isCloseTo(1, within(1e-12));
    days.set(6, null);
    assertThat(ratio(days).coupled().known()).isTrue();
    days.set(15, null);
    assertThat(ratio(days).coupled().known()).isFalse();
  }

  @Test
  void undefinedAfterWeeksOfNothing() {
    LoadRatio rest = ratio(days(28, 0.0, 7, 0.0));
    assertThat(rest.weighted().because()).contains("training");
    assertThat(rest.acute().value()).isEqualTo(0);
    LoadRatio back = ratio(days(21, 0.0, 7, 10.0));
    assertThat(back.uncoupled().value()).isNull();
    assertThat(back.coupled().value()).isCloseTo(4, within(1e-12));
  }

  @Test
  void refusesNegativeLoads() {
    assertThat(ratio(days(28, 30.0, 7, -1.0)).coupled().value()).isNull();
  }

  private static double writtenOut(double[] days, int span) {
    double share = 2.0 / (span + 1);
    double mean = days[0] * Math.pow(1 - share, days.length - 1);
    for (int day = 1; day < days.length; day++) {
      mean += share * days[day] * Math.pow(1 - share, days.length - 1 - day);
    }
    return mean;
  }

  private static LoadRatio ratio(List<Double> days) {
    return LoadRatio.of(days, false, CONSTANTS);
  }

  private static List<Double> days(int many, Double load, int more, Double then) {
    List<Double> days = new ArrayList<>();
    for (int day = 0; day < many + more; day++) {
      days.add(day < many ? load : then);
    }
    return days;
  }
}
