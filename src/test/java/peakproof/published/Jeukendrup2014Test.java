package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.measure.Band;
import peakproof.measure.Carbohydrate;
import peakproof.measure.Carbohydrate.Stretch;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;

/**
 * Jeukendrup A 2014, Sports Med 44 Suppl 1, doi 10.1007/s40279-014-0148-z: carbohydrate by the
 * length of the effort, whatever the body's mass; one source alone is taken up at about 60 g/h.
 * Totals are plain products. Where "about an hour" ends is common practice.
 */
class Jeukendrup2014Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void totalsOfRideAndRun() {
    assertThat(Carbohydrate.grams(List.of(new Stretch(80, 5.5))).value()).isEqualTo(440);
    List<Stretch> race = List.of(new Stretch(90, 5.5), new Stretch(60, 4.0));
    assertThat(Carbohydrate.grams(race).value()).isEqualTo(735);
    assertThat(Carbohydrate.rate(race).value()).isCloseTo(77.4, within(0.05));
  }

  @Test
  void targetsByDuration() {
    assertTarget(0.75, 0, 0);
    assertTarget(0.76, 0, 30);
    assertTarget(1, 0, 30);
    assertTarget(1.24, 0, 30);
    assertTarget(1.25, 30, 60);
    assertTarget(2, 30, 60);
    assertTarget(2.49, 30, 60);
    assertTarget(2.5, 30, 90);
    assertTarget(12, 30, 90);
  }

  @Test
  void moreThan60GramsNeedASecondSource() {
    assertThat(Carbohydrate.needsSecondSource(60, CONSTANTS)).isFalse();
    assertThat(Carbohydrate.needsSecondSource(61, CONSTANTS)).isTrue();
  }

  @Test
  void unknownWithoutRateOrTime() {
    assertThat(Carbohydrate.rate(List.of()).value()).isNull();
    assertThat(Carbohydrate.rate(List.of(new Stretch(80, 0))).because()).contains("hours");
    assertThat(Carbohydrate.grams(List.of(new Stretch(-1, 1))).value()).isNull();
    assertThat(Carbohydrate.grams(List.of(new Stretch(1, -1))).value()).isNull();
    assertThat(Carbohydrate.rate(List.of(new Stretch(-1, 1))).value()).isNull();
    assertThat(Carbohydrate.grams(List.of()).value()).isEqualTo(0);
    assertThat(Carbohydrate.target(-1, CONSTANTS).because()).contains("how long");
  }

  private static void assertTarget(double hours, double from, double to) {
    Band band = Carbohydrate.target(hours, CONSTANTS);
    assertThat(band.from()).isEqualTo(from);
    assertThat(band.to()).isEqualTo(to);
    assertThat(band.because()).isEmpty();
  }
}
