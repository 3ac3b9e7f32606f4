package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.CriticalRate;
import peakproof.measure.CriticalRate.Fit;
import peakproof.measure.CriticalRate.Trial;
import peakproof.measure.ShippedConstants;

/**
 * Monod H, Scherrer J 1965, Ergonomics 8:329-338 (from memory): work to exhaustion is a straight
 * line over time, and power one over the inverse of time; methods in Muniz-Pumares D et al. 2019,
 * doi 10.1519/JSC.0000000000002977. The trials are arithmetic from the two lines, worked to the
 * digits shown; half of the last digit is the tolerance. Limits on trials are common practice.
 */
class MonodScherrer1965Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final LocalDate DAY = LocalDate.of(2027, 5, 1);

  @Test
  void twoTrialsOf330And270Watts() {
    CriticalRate rate = of(trial(330, 180), trial(270, 720));
    assertThat(rate.workTime().critical()).isCloseTo(250, within(1e-9));
    assertThat(rate.workTime().reserve()).isCloseTo(14_400, within(1e-6));
    assertThat(rate.workTime().secondsAt(300).value()).isCloseTo(288, within(1e-6));
    assertThat(rate.workTime().rateFor(360).value()).isCloseTo(290, within(1e-9));
    assertThat(rate.spread()).isCloseTo(0, within(1e-9));
  }

  @Test
  void twoTrialsOf320And275Watts() {
    CriticalRate rate = of(trial(320, 300), trial(275, 1200));
    assertThat(rate.workTime().critical()).isCloseTo(260, within(1e-9));
    assertThat(rate.workTime().reserve()).isCloseTo(18_000, within(1e-6));
    assertThat(rate.inverseTime().critical()).isCloseTo(260, within(1e-9));
    assertThat(rate.inverseTime().reserve()).isCloseTo(18_000, within(1e-6));
  }

  @Test
  void threeNoisyTrialsGiveTwoAnswers() {
    CriticalRate rate = of(trial(350, 180), trial(300, 420), trial(270, 900));
    assertThat(rate.workTime().critical()).isCloseTo(249.107, within(0.0005));
    assertThat(rate.workTime().reserve()).isCloseTo(19_446, within(0.5));
    assertThat(rate.inverseTime().critical()).isCloseTo(253.686, within(0.0005));
    assertThat(rate.inverseTime().reserve()).isCloseTo(17_567, within(0.5));
    // 4.579 over their mean of 251.397
    assertThat(rate.spread()).isCloseTo(0.0182, within(0.00005));
    assertThat(rate.reservations()).isEmpty();
  }

  @Test
  void trialsWithoutNoiseGiveTheirOwnLineBackInBothForms() {
    CriticalRate rate = of(on(250, 20_000, 180), on(250, 20_000, 420), on(250, 20_000, 900));
    for (Fit fit : List.of(rate.workTime(), rate.inverseTime())) {
      assertThat(fit.critical()).isCloseTo(250, within(1e-9));
      assertThat(fit.reserve()).isCloseTo(20_000, within(1e-6));
    }
  }

  @Test
  void runningGivesSpeedAndDistanceBack() {
    CriticalRate rate = of(on(4.2, 180, 200), on(4.2, 180, 500), on(4.2, 180, 800));
    assertThat(rate.workTime().critical()).isCloseTo(4.2, within(1e-12));
    assertThat(rate.inverseTime().reserve()).isCloseTo(180, within(1e-9));
  }

  @Test
  void unknownOfOneDuration() {
    assertUnknown(of(), "different duration");
    assertUnknown(of(trial(300, 300)), "different duration");
    assertUnknown(of(trial(300, 300), trial(310, 300)), "different duration");
  }

  @Test
  void unknownWhenTheLongerTrialIsHeldAsHardOrDoesNoMoreWork() {
    assertUnknown(of(trial(300, 300), trial(300, 600)), "does not fit");
    assertUnknown(of(trial(300, 300), trial(310, 600)), "does not fit");
    assertUnknown(of(trial(300, 300), trial(150, 600)), "does not fit");
    assertThat(of(trial(300, 300), trial(299, 600)).because()).isEmpty();
    assertThat(of(trial(300, 300), trial(151, 600)).because()).isEmpty();
  }

  @Test
  void trialsTooShortOrTooLongDoNotCount() {
    assertThat(of(trial(400, 90), trial(270, 1200)).because()).isEmpty();
    assertUnknown(of(trial(400, 89), trial(270, 1200)), "different duration");
    assertUnknown(of(trial(400, 90), trial(270, 1201)), "different duration");
    assertUnknown(of(trial(0, 180), trial(270, 720)), "different duration");
    assertUnknown(of(trial(Double.NaN, 180), trial(270, 720)), "different duration");
  }

  @Test
  void saysWhatSpeaksAgainstIt() {
    Trial late = new Trial(DAY.plusDays(29), 270, 720);
    Trial inTime = new Trial(DAY.plusDays(28), 270, 720);
    assertThat(of(trial(330, 180), late).reservations())
        .containsExactly("the trials lie more than 28 days apart");
    assertThat(of(late, trial(330, 180)).reservations()).hasSize(1);
    assertThat(of(trial(330, 180), inTime).reservations()).isEmpty();
    assertThat(of(trial(330, 180), trial(280, 719)).reservations())
        .containsExactly("the longest trial is short");
    assertThat(of(trial(400, 180), trial(300, 420), trial(290, 900)).reservations())
        .containsExactly("the two lines disagree: test again");
  }

  @Test
  void orderOfTrialsDoesNotMatter() {
    assertThat(of(trial(270, 900), trial(350, 180), trial(300, 420)))
        .isEqualTo(of(trial(350, 180), trial(300, 420), trial(270, 900)));
  }

  @Test
  void nothingIsExhaustedAtTheCriticalRateOrInNoTime() {
    Fit fit = of(trial(330, 180), trial(270, 720)).workTime();
    assertThat(fit.secondsAt(250).value()).isNull();
    assertThat(fit.secondsAt(249).value()).isNull();
    assertThat(fit.secondsAt(251).value()).isCloseTo(14_400, within(1e-5));
    assertThat(fit.rateFor(0).value()).isNull();
  }

  @Test
  void agreesWithASecondLeastSquaresOnRandomTrials() {
    Random random = new Random(1965);
    int accepted = 0;
    for (int run = 0; run < 1500; run++) {
      List<Trial> trials = randomTrials(random);
      CriticalRate rate = CriticalRate.of(trials, CONSTANTS);
      SimpleRegression work = new SimpleRegression();
      SimpleRegression inverse = new SimpleRegression();
      for (Trial trial : trials) {
        work.addData(trial.seconds(), trial.rate() * trial.seconds());
        inverse.addData(1 / trial.seconds(), trial.rate());
      }
      if (rate.workTime() != null) {
        accepted++;
        // doubles over at most six numbers of up to half a million
        assertThat(rate.workTime().critical()).isCloseTo(work.getSlope(), within(1e-8));
        assertThat(rate.workTime().reserve()).isCloseTo(work.getIntercept(), within(1e-5));
        assertThat(rate.inverseTime().critical()).isCloseTo(inverse.getIntercept(), within(1e-8));
        assertThat(rate.inverseTime().reserve()).isCloseTo(inverse.getSlope(), within(1e-5));
      }
    }
    assertThat(accepted).isGreaterThan(1000);
  }

  private static List<Trial> randomTrials(Random random) {
    double critical = 150 + 200 * random.nextDouble();
    double reserve = 10_000 + 15_000 * random.nextDouble();
    List<Trial> trials = new ArrayList<>();
    int count = 2 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      double seconds = 120 + 200 * i;
      trials.add(
          new Trial(
              DAY.plusDays(i), critical + reserve / seconds + random.nextGaussian(), seconds));
    }
    return trials;
  }

  private static void assertUnknown(CriticalRate rate, String because) {
    assertThat(rate.workTime()).isNull();
    assertThat(rate.inverseTime()).isNull();
    assertThat(rate.spread()).isNull();
    assertThat(rate.because()).contains(because);
  }

  private static CriticalRate of(Trial... trials) {
    return CriticalRate.of(List.of(trials), CONSTANTS);
  }

  private static Trial on(double critical, double reserve, double seconds) {
    return trial(critical + reserve / seconds, seconds);
  }

  private static Trial trial(double rate, double seconds) {
    return new Trial(DAY, rate, seconds);
  }
}
