package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;

class RisingRootTest {
  @Test
  void findsARootAtEitherBracket() {
    assertThat(RisingRoot.between(0, 4, x -> x)).isCloseTo(0, within(1e-15));
    assertThat(RisingRoot.between(0, 4, x -> x - 4)).isCloseTo(4, within(1e-15));
  }

  @Test
  void nullWithoutARootBetweenTheBrackets() {
    assertThat(RisingRoot.between(0, 4, x -> x + 1)).isNull();
    assertThat(RisingRoot.between(0, 4, x -> x - 5)).isNull();
    assertThat(RisingRoot.between(0, 4, x -> Double.NaN)).isNull();
  }

  @Test
  void agreesWithASecondRootFinderOnRandomCubics() {
    Random random = new Random(3);
    for (int run = 0; run < 1000; run++) {
      double a = random.nextDouble();
      double b = 5 * random.nextDouble();
      double c = 1 + 200 * random.nextDouble();
      double other =
          new BrentSolver(1e-13, 1e-13, 1e-13).solve(1000, x -> a * x * x * x + b * x - c, 0, 1000);
      // a flat cubic moves its root by 1e-13 over a slope of at least b
      assertThat(RisingRoot.between(0, 1000, x -> a * x * x * x + b * x - c))
          .isCloseTo(other, within(1e-9 * (1 + other)));
    }
  }
}
