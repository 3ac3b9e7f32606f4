package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.hipparchus.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.measure.Athletes;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.Coverage;
import peakproof.measure.Monotony;
import peakproof.measure.SessionLoad;
import peakproof.measure.ShippedConstants;

/**
 * Foster C 1998, Med Sci Sports Exerc 30:1164, and Foster C et al. 2001, J Strength Cond Res
 * 15:109: the load of a session is its minutes times the rating of the whole of it; monotony is the
 * mean daily load of a week over its standard deviation, strain the load times that. Products are
 * exact; the rest is arithmetic to the digits shown. The paper does not say which deviation; that
 * of a sample is the default.
 */
class Foster1998Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final Constants POPULATION = ShippedConstants.with(Constant.MONOTONY_LESS, 0);
  private static final Double[] WEEK = {300.0, 0.0, 420.0, 180.0, 0.0, 600.0, 240.0};
  private static final Double[] ONE_REST = {300.0, 300.0, 300.0, 0.0, 300.0, 300.0, 300.0};

  @Test
  void minutesTimesRating() {
    assertThat(load(60, 4.0)).isEqualTo(240);
    assertThat(load(300, 3.0)).isEqualTo(900);
    assertThat(load(90, 7.0)).isEqualTo(630);
    assertThat(load(13 * 60, 7.0)).isEqualTo(5460);
  }

  @Test
  void twoSessionsOfADay() {
    assertThat(load(45, 3.0) + load(60, 6.0)).isEqualTo(495);
  }

  @Test
  void unknownWithoutRatingOrTime() {
    assertThat(load(60, null)).isNull();
    assertThat(SessionLoad.of(null, 4.0)).isNull();
    assertThat(load(60, 0.0)).isEqualTo(0);
  }

  @Test
  void weekOfMixedDays() {
    Monotony sample = week(CONSTANTS, WEEK);
    assertThat(sample.total().value()).isEqualTo(1740);
    assertThat(sample.deviation().value()).isCloseTo(217.518, within(0.0005));
    assertThat(sample.monotony().value()).isCloseTo(1.143, within(0.0005));
    assertThat(sample.strain().value()).isCloseTo(1988.4, within(0.05));
    assertThat(sample.total().value() / 7).isCloseTo(248.571, within(0.0005));
    Monotony population = week(POPULATION, WEEK);
    assertThat(population.deviation().value()).isCloseTo(201.383, within(0.0005));
    assertThat(population.monotony().value()).isCloseTo(1.234, within(0.0005));
    assertThat(population.strain().value()).isCloseTo(2147.7, within(0.05));
  }

  @Test
  void sixEqualDaysAndOneOfRest() {
    assertThat(week(CONSTANTS, ONE_REST).monotony().value()).isCloseTo(2.268, within(0.0005));
    assertThat(week(CONSTANTS, ONE_REST).strain().value()).isCloseTo(4082, within(0.5));
    assertThat(week(POPULATION, ONE_REST).monotony().value()).isCloseTo(2.449, within(0.0005));
    assertThat(week(POPULATION, ONE_REST).strain().value()).isCloseTo(4409, within(0.5));
  }

  @Test
  void nearlyEqualDaysAreShownAsTen() {
    Monotony week = week(CONSTANTS, 400.0, 350.0, 450.0, 400.0, 380.0, 420.0, 400.0);
    assertThat(week.monotony().value()).isCloseTo(12.87, within(0.005));
    assertThat(week.shown(CONSTANTS).value()).isEqualTo(10);
    assertThat(week(CONSTANTS, WEEK).shown(CONSTANTS)).isEqualTo(week(CONSTANTS, WEEK).monotony());
  }

  @Test
  void equalDaysHaveNoMonotony() {
    for (double load : new double[] {0, 300, 333.3, 1e15}) {
      Double[] days = new Double[7];
      Arrays.fill(days, load);
      Monotony week = week(CONSTANTS, days);
      assertThat(week.monotony().because()).isEqualTo("every day identical");
      assertThat(week.strain().value()).isNull();
      assertThat(week.shown(CONSTANTS).value()).isNull();
      assertThat(week.total().value()).isCloseTo(7 * load, within(1e-9 * load));
    }
    // sums that round do not make equal days differ
    Double[] rounded = {1e6, 1e6, 1e6, Math.nextUp(1e6), 1e6, 1e6, 1e6};
    assertThat(week(CONSTANTS, rounded).monotony().value()).isNull();
  }

  @Test
  void anUnknownDayIsNoRestDay() {
    Monotony six = week(CONSTANTS, 300.0, null, 420.0, 180.0, 0.0, 600.0, 240.0);
    assertThat(six.total().because()).contains("every day");
    assertThat(six.strain().value()).isNull();
    // the six have mean 290 and squares about it of 211 800 in all
    assertThat(six.monotony().value()).isCloseTo(290 / Math.sqrt(211_800 / 5.0), within(1e-12));
    assertThat(six.coverage().judged(CONSTANTS)).isEqualTo(Coverage.Judgement.SHOWN);
    Monotony five = week(CONSTANTS, 300.0, null, 420.0, null, 0.0, 600.0, 240.0);
    assertThat(five.monotony().known()).isTrue();
    assertThat(five.coverage().judged(CONSTANTS)).isEqualTo(Coverage.Judgement.RESERVED);
    Monotony four = week(CONSTANTS, 300.0, null, 420.0, null, null, 600.0, 240.0);
    assertThat(four.monotony().because()).contains("not enough recorded days");
    assertThat(four.coverage().judged(CONSTANTS)).isEqualTo(Coverage.Judgement.SUPPRESSED);
  }

  @Test
  void onlySevenDaysAreAWeek() {
    assertThat(week(CONSTANTS, 1.0, 2.0, 3.0).monotony().because()).contains("seven days");
    assertThat(week(CONSTANTS, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0).total().value()).isNull();
    assertThat(week(CONSTANTS, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, -7.0).total().value()).isNull();
  }

  @Test
  void sportsThatVaryMayAddUpToAMonotonousWhole() {
    List<Double> swim = List.of(100.0, 0.0, 100.0, 0.0, 100.0, 0.0, 100.0);
    List<Double> run = List.of(0.0, 101.0, 0.0, 101.0, 0.0, 101.0, 0.0);
    Monotony overall = Monotony.overall(List.of(swim, run), CONSTANTS);
    assertThat(overall.total().value()).isEqualTo(703);
    assertThat(overall.monotony().value()).isGreaterThan(100);
    assertThat(Monotony.of(swim, CONSTANTS).monotony().value()).isLessThan(2);
    assertThat(Monotony.of(run, CONSTANTS).monotony().value()).isLessThan(2);
    List<Double> hole = Arrays.asList(null, 101.0, 0.0, 101.0, 0.0, 101.0, 0.0);
    assertThat(Monotony.overall(List.of(swim, hole), CONSTANTS).total().value()).isNull();
    assertThat(Monotony.overall(List.of(swim, List.of(1.0)), CONSTANTS).coverage().known())
        .isEqualTo(1);
  }

  @Test
  void doublingLoadsDoublesStrainAndLeavesMonotonyAndOrderDoesNotMatter() {
    Double[] doubled = Arrays.stream(WEEK).map(load -> 2 * load).toArray(Double[]::new);
    List<Double> backwards = Arrays.asList(WEEK.clone());
    Collections.reverse(backwards);
    Monotony once = week(CONSTANTS, WEEK);
    assertThat(week(CONSTANTS, doubled).monotony().value())
        .isCloseTo(once.monotony().value(), within(1e-12));
    assertThat(week(CONSTANTS, doubled).strain().value())
        .isCloseTo(2 * once.strain().value(), within(1e-9));
    assertThat(Monotony.of(backwards, CONSTANTS).monotony().value())
        .isCloseTo(once.monotony().value(), within(1e-12));
  }

  @Test
  void agreesWithASecondDeviationOnRandomWeeks() {
    Random random = new Random(1998);
    for (int run = 0; run < 1000; run++) {
      double[] loads = random.doubles(7, 0, 900).toArray();
      Double[] days = Arrays.stream(loads).boxed().toArray(Double[]::new);
      // seven doubles of under a thousand
      assertThat(week(CONSTANTS, days).deviation().value())
          .isCloseTo(new StandardDeviation(true).evaluate(loads), within(1e-9));
      assertThat(week(POPULATION, days).deviation().value())
          .isCloseTo(new StandardDeviation(false).evaluate(loads), within(1e-9));
    }
  }

  private static Monotony week(Constants constants, Double... days) {
    return Monotony.of(Arrays.asList(days), constants);
  }

  private static Double load(double minutes, Double rpe) {
    return SessionLoad.logged(
        Athletes.logged(
            Sport.RUN, new Session.Recorded(60 * minutes, null, rpe, null, null, null, null)));
  }
}
