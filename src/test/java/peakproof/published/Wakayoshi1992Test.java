package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.CriticalSwimSpeed;
import peakproof.measure.CriticalSwimSpeed.Trial;
import peakproof.measure.ShippedConstants;

/**
 * Wakayoshi K et al. 1992, Eur J Appl Physiol 64:153-157, doi 10.1007/BF00717953: critical swim
 * speed is the slope of distance on time; the group of the paper had 1.166 m/s (SD 0.052). The
 * field pair of 200 m and 400 m: Takahashi S, Wakayoshi K et al. 2002. The pairs are arithmetic
 * from the formula, speeds to five digits and paces to a tenth; half of the last digit is the
 * tolerance. The limits on the intercept are common practice, no source.
 */
class Wakayoshi1992Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void fourHundredIn640AndTwoHundredIn310() {
    CriticalSwimSpeed fit = pair(400, 190);
    assertThat(fit.speed()).isCloseTo(0.95238, within(0.000005));
    assertThat(fit.reserve()).isCloseTo(19.05, within(0.005));
    assertThat(100 / fit.speed()).isCloseTo(105.0, within(0.05));
  }

  @Test
  void otherFieldPairs() {
    assertThat(100 / pair(360, 170).speed()).isCloseTo(95.0, within(0.05));
    assertThat(pair(360, 170).reserve()).isCloseTo(21.05, within(0.005));
    assertThat(100 / pair(330, 156).speed()).isCloseTo(87.0, within(0.05));
    assertThat(100 / pair(480, 226).speed()).isCloseTo(127.0, within(0.05));
    assertThat(pair(480, 226).reserve()).isCloseTo(22.05, within(0.005));
  }

  @Test
  void trialsOnTheLineOfThePapersGroupGiveItsSpeedBack() {
    List<Trial> trials =
        List.of(200.0, 400.0, 800.0).stream()
            .map(metres -> new Trial(metres, (metres - 15) / 1.166))
            .toList();
    CriticalSwimSpeed fit = CriticalSwimSpeed.of(trials, CONSTANTS);
    assertThat(fit.speed()).isCloseTo(1.166, within(1e-9));
    assertThat(fit.reserve()).isCloseTo(15, within(1e-9));
  }

  @Test
  void refusesATwoHundredSlowerThanHalfTheFourHundred() {
    CriticalSwimSpeed fit = pair(400, 200);
    assertThat(fit.speed()).isNull();
    assertThat(fit.reserve()).isNull();
    assertThat(fit.refusal()).contains("mis-paced");
  }

  @Test
  void refusesAReserveOutsideFiveToFortyFiveMetres() {
    // reserve = 200 - speed x time of the 200 m; 5 m and 45 m themselves are accepted
    assertThat(reserveOf(5).speed()).isNotNull();
    assertThat(reserveOf(4.9).speed()).isNull();
    assertThat(reserveOf(45).speed()).isNotNull();
    assertThat(reserveOf(45.1).refusal()).isNotEmpty();
  }

  @Test
  void refusesASingleDistance() {
    assertThat(CriticalSwimSpeed.of(List.of(), CONSTANTS).speed()).isNull();
    assertThat(
            CriticalSwimSpeed.of(List.of(new Trial(400, 400), new Trial(400, 390)), CONSTANTS)
                .speed())
        .isNull();
  }

  @Test
  void agreesWithASecondLeastSquaresOnRandomTrials() {
    Random random = new Random(1992);
    int accepted = 0;
    for (int run = 0; run < 1500; run++) {
      List<Trial> trials = randomTrials(random);
      CriticalSwimSpeed fit = CriticalSwimSpeed.of(trials, CONSTANTS);
      SimpleRegression regression = new SimpleRegression();
      trials.forEach(trial -> regression.addData(trial.seconds(), trial.metres()));
      if (fit.speed() != null) {
        accepted++;
        // both work in doubles over at most five numbers of under a thousand
        assertThat(fit.speed()).isCloseTo(regression.getSlope(), within(1e-10));
        assertThat(fit.reserve()).isCloseTo(regression.getIntercept(), within(1e-7));
      }
    }
    assertThat(accepted).isGreaterThan(1000);
  }

  private static List<Trial> randomTrials(Random random) {
    double speed = 0.7 + random.nextDouble();
    double reserve = 10 + 25 * random.nextDouble();
    List<Trial> trials = new ArrayList<>();
    int count = 2 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      double metres = 200 + 150 * i;
      trials.add(new Trial(metres, (metres - reserve) / speed + random.nextGaussian()));
    }
    return trials;
  }

  private static CriticalSwimSpeed reserveOf(double metres) {
    return CriticalSwimSpeed.of(
        List.of(new Trial(200, 200 - metres), new Trial(400, 400 - metres)), CONSTANTS);
  }

  private static CriticalSwimSpeed pair(double four, double two) {
    return CriticalSwimSpeed.of(List.of(new Trial(400, four), new Trial(200, two)), CONSTANTS);
  }
}
