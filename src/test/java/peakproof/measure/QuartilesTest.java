package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;

class QuartilesTest {
  @Test
  void interpolatesBetweenNeighbours() {
    assertThat(Quartiles.of(List.of(4.0, 1.0, 3.0, 2.0))).isEqualTo(new Quartiles(1.75, 2.5, 3.25));
  }

  @Test
  void ofOneValueAreThatValue() {
    assertThat(Quartiles.of(List.of(7.0))).isEqualTo(new Quartiles(7, 7, 7));
  }

  @Test
  void ofNothingAndOfNoNumberAreUnknown() {
    assertThat(Quartiles.of(List.of())).isNull();
    assertThat(Quartiles.of(List.of(1.0, Double.NaN))).isNull();
  }

  @Test
  void agreeWithAGeneralLibrary() {
    Random random = new Random(20270704);
    for (int round = 0; round < 200; round++) {
      List<Double> values = new ArrayList<>();
      for (int i = random.nextInt(30); i >= 0; i--) {
        values.add(1000 * random.nextDouble());
      }
      Quartiles ours = Quartiles.of(values);
      Percentile theirs = new Percentile().withEstimationType(EstimationType.R_7);
      theirs.setData(values.stream().mapToDouble(Double::doubleValue).toArray());
      assertThat(ours).isNotNull();
      assertThat(ours.first()).isCloseTo(theirs.evaluate(25), within(1e-9));
      assertThat(ours.median()).isCloseTo(theirs.evaluate(50), within(1e-9));
      assertThat(ours.third()).isCloseTo(theirs.evaluate(75), within(1e-9));
    }
  }
}
