package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;
import peakproof.document.Sport;
import peakproof.measure.Amount;
import peakproof.measure.Constants;
import peakproof.measure.Pace;
import peakproof.measure.ShippedConstants;
import peakproof.measure.UnitSlip;

/**
 * The international yard and pound agreement of 1959: a yard is 0.9144 m, a mile 1609.344 m. All
 * values are arithmetic from it, worked to the digits shown; half of the last digit is the
 * tolerance. Where a mean looks like a slip of units is common practice, no source.
 */
class PaceConversionTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final Amount UNKNOWN = new Amount(null, "a distance and a time above zero");
  private static final double HOUR = 3600;
  private static final double FULL_SWIM = 70 * 60;
  private static final double MARATHON_TIME = 3 * HOUR + 50 * 60;

  @Test
  void swimOf3800MetresIn1h10() {
    assertThat(Pace.per100m(3800, FULL_SWIM).value()).isCloseTo(110.526, within(0.0005));
    assertThat(Pace.per100yd(3800, FULL_SWIM).value()).isCloseTo(101.065, within(0.0005));
    assertThat(Pace.speed(3800, FULL_SWIM).value()).isCloseTo(0.90476, within(0.000005));
  }

  @Test
  void half1900MetresIn35MinutesIsTheSamePace() {
    assertThat(Pace.per100m(1900, 35 * 60).value())
        .isEqualTo(Pace.per100m(3800, FULL_SWIM).value());
  }

  @Test
  void marathonIn3h50() {
    assertThat(Pace.perKm(Pace.MARATHON, MARATHON_TIME).value()).isCloseTo(327.053, within(0.0005));
    assertThat(Pace.perMile(Pace.MARATHON, MARATHON_TIME).value())
        .isCloseTo(526.341, within(0.0005));
    assertThat(Pace.speed(Pace.MARATHON, MARATHON_TIME).value())
        .isCloseTo(3.05761, within(0.000005));
  }

  @Test
  void fiveMinutesAKilometreIs8Minutes2Point8AMile() {
    assertThat(Pace.perMile(1000, 300).value()).isCloseTo(482.803, within(0.0005));
  }

  @Test
  void ride() {
    assertThat(Pace.kmh(180_000, 5.5 * HOUR).value()).isCloseTo(32.727, within(0.0005));
    assertThat(Pace.kmh(10, 1).value()).isEqualTo(36);
    assertThat(Pace.kmh(180_000, 5 * HOUR).value()).isCloseTo(36, within(1e-9));
  }

  @Test
  void meansOfWholeSessionsThatOnlyASlipOfUnitsGives() {
    assertSlip(Sport.SWIM, 100, 55, 54.9);
    assertSlip(Sport.SWIM, 100, 240, 240.1);
    assertSlip(Sport.RUN, 1000, 150, 149.9);
    assertSlip(Sport.RUN, 1000, 600, 600.1);
    assertSlip(Sport.BIKE, 10_000, HOUR, HOUR * 1.001);
    assertSlip(Sport.BIKE, 60_000, HOUR, HOUR * 0.999);
    assertThat(UnitSlip.of(Sport.STRENGTH, 100, 55, CONSTANTS)).isNull();
    assertThat(UnitSlip.of(Sport.OTHER, 100, 55, CONSTANTS)).isNull();
    assertThat(UnitSlip.of(Sport.SWIM, 0, 55, CONSTANTS)).isNull();
    assertThat(UnitSlip.of(Sport.SWIM, 100, 0, CONSTANTS)).isNull();
  }

  @Test
  void agreesWithDecimalArithmeticOnRandomInputs() {
    Random random = new Random(1959);
    for (int run = 0; run < 1000; run++) {
      double metres = 50 + 200_000 * random.nextDouble();
      double seconds = 20 + 40_000 * random.nextDouble();
      assertDecimal(Pace.per100m(metres, seconds).value(), "100", seconds, metres);
      assertDecimal(Pace.per100yd(metres, seconds).value(), "91.44", seconds, metres);
      assertDecimal(Pace.perKm(metres, seconds).value(), "1000", seconds, metres);
      assertDecimal(Pace.perMile(metres, seconds).value(), "1609.344", seconds, metres);
      assertDecimal(Pace.speed(metres, seconds).value(), "1", metres, seconds);
      assertDecimal(Pace.kmh(metres, seconds).value(), "3.6", metres, seconds);
    }
  }

  /** Three roundings of doubles at most, hence a relative tolerance of 4e-16 each. */
  private static void assertDecimal(double actual, String factor, double times, double over) {
    double decimal =
        new BigDecimal(factor)
            .multiply(new BigDecimal(times))
            .divide(new BigDecimal(over), MathContext.DECIMAL128)
            .doubleValue();
    assertThat(actual).isCloseTo(decimal, within(1.2e-15 * decimal));
  }

  private static void assertSlip(Sport sport, double metres, double sound, double slipped) {
    assertThat(UnitSlip.of(sport, metres, sound, CONSTANTS)).isFalse();
    assertThat(UnitSlip.of(sport, metres, slipped, CONSTANTS)).isTrue();
  }

  @Test
  void nothingIsConvertedWithoutDistanceOrTime() {
    for (double none : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThat(Pace.per100m(none, 60)).isEqualTo(UNKNOWN);
      assertThat(Pace.per100yd(60, none)).isEqualTo(UNKNOWN);
      assertThat(Pace.perKm(1000, none)).isEqualTo(UNKNOWN);
      assertThat(Pace.perMile(none, 1000)).isEqualTo(UNKNOWN);
      assertThat(Pace.speed(none, 1)).isEqualTo(UNKNOWN);
      assertThat(Pace.kmh(1, none)).isEqualTo(UNKNOWN);
    }
  }

  @Test
  void whatNoNumberCanHoldIsUnknown() {
    assertThat(Pace.speed(Double.MAX_VALUE, Double.MIN_VALUE).known()).isFalse();
    assertThat(Pace.kmh(Double.MAX_VALUE, 1).known()).isFalse();
    assertThat(Pace.speed(Double.MAX_VALUE, 1).value()).isEqualTo(Double.MAX_VALUE);
  }
}
