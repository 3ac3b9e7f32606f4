package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The median against a second implementation, on random lists. */
class MedianTest {
  @Test
  void agreesWithASecondImplementation() {
    Random random = new Random(28);
    for (int run = 0; run < 1000; run++) {
      List<Double> values = new ArrayList<>();
      int count = 1 + random.nextInt(40);
      for (int i = 0; i < count; i++) {
        values.add(40 * random.nextDouble());
      }
      double[] array = values.stream().mapToDouble(Double::doubleValue).toArray();
      double second = new org.hipparchus.stat.descriptive.rank.Median().evaluate(array);
      // halves of two doubles under 40
      assertThat(Median.of(values)).isCloseTo(second, within(1e-12));
    }
  }

  @Test
  void ofNothingIsUnknown() {
    assertThat(Median.of(List.of())).isNull();
    assertThat(Median.of(List.of(1.0, 4.0))).isEqualTo(2.5);
    assertThat(Median.of(List.of(1.0, 4.0, Double.NaN))).isNull();
    assertThat(Median.of(List.of(1.0, Double.POSITIVE_INFINITY))).isNull();
  }
}
