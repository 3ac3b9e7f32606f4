package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;
import peakproof.measure.Wbgt;

/**
 * The Australian Bureau of Meteorology's approximation after ACSM 1984, with vapour pressure in hPa
 * (in kPa it would read some ten degrees low). Values are arithmetic to a hundredth.
 */
class BureauApproximationTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void vapourPressureIsInHectopascals() {
    assertThat(Wbgt.vapourPressure(20, 0.50).value()).isCloseTo(11.661, within(0.0005));
    // water boils at 100 °C and 1013 hPa; half way there saturation is 123 hPa (steam tables)
    assertThat(Wbgt.vapourPressure(50, 1).value()).isCloseTo(123.4, within(1.0));
  }

  @Test
  void temperatureAndHumidity() {
    assertThat(estimated(20, 0.50)).isCloseTo(19.86, within(0.005));
    assertThat(estimated(25, 0.50)).isCloseTo(24.32, within(0.005));
    assertThat(estimated(30, 0.50)).isCloseTo(29.26, within(0.005));
    assertThat(estimated(30, 0.70)).isCloseTo(32.58, within(0.005));
    assertThat(estimated(35, 0.40)).isCloseTo(32.59, within(0.005));
  }

  @Test
  void agreesWithASecondFormulaForVapourPressure() {
    Random random = new Random(1984);
    for (int run = 0; run < 1000; run++) {
      double air = 35 * random.nextDouble();
      double humidity = random.nextDouble();
      // Bolton 1980, Mon Weather Rev 108:1046 (from memory), stated for up to 35 °C; either fit is
      // good to about half a per cent, so that they lie within one
      double bolton = humidity * 6.112 * Math.exp(17.67 * air / (air + 243.5));
      assertThat(Wbgt.vapourPressure(air, humidity).value())
          .isCloseTo(bolton, within(0.01 * bolton + 1e-9));
    }
  }

  @Test
  void moistAndWarmAirIsNeverCooler() {
    for (double air = 0; air < 45; air++) {
      assertThat(estimated(air + 1, 0.5)).isGreaterThan(estimated(air, 0.5));
      assertThat(estimated(air, 0.6)).isGreaterThan(estimated(air, 0.5));
    }
  }

  @Test
  void unknownOutsideAirAndHumidity() {
    assertThat(Wbgt.estimated(71, 0.5, CONSTANTS).value()).isNull();
    assertThat(Wbgt.estimated(30, 50, CONSTANTS).because()).contains("humidity");
    assertThat(Wbgt.vapourPressure(30, -0.01).value()).isNull();
    assertThat(Wbgt.vapourPressure(30, 1).known()).isTrue();
  }

  private static double estimated(double air, double humidity) {
    return Wbgt.estimated(air, humidity, CONSTANTS).value();
  }
}
