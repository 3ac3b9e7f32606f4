package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.RunSpike;
import peakproof.measure.RunSpike.Size;
import peakproof.measure.ShippedConstants;

/**
 * Frandsen JSB et al. 2025, Br J Sports Med 59(17):1203: a run against the longest of the 30 days
 * before; classes up to 10 %, over 10 to 30 %, over 30 to 100 %, over 100 %. The runs are
 * arithmetic from that, to a tenth of a per cent.
 */
class Frandsen2025Test {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final LocalDate DAY = LocalDate.of(2027, 5, 30);

  @Test
  void classesOfRunsAfterALongestOf20Kilometres() {
    assertSpike(22.0, 0.100, Size.NONE);
    assertSpike(22.1, 0.105, Size.SMALL);
    assertSpike(23.0, 0.15, Size.SMALL);
    assertSpike(26.0, 0.30, Size.SMALL);
    assertSpike(26.5, 0.325, Size.MODERATE);
    assertSpike(40.0, 1.00, Size.MODERATE);
    assertSpike(41.0, 1.05, Size.LARGE);
  }

  @Test
  void thirtiethDayCountsAndTheThirtyFirstDoesNot() {
    assertThat(of(22_100, run(30, 20_000.0), run(1, 5_000.0)).size()).isEqualTo(Size.SMALL);
    assertThat(of(22_100, run(31, 20_000.0), run(1, 5_000.0)).size()).isEqualTo(Size.LARGE);
  }

  @Test
  void runsOfTheSameDayAndLaterDoNotCount() {
    assertThat(of(22_100, run(0, 30_000.0), run(-1, 30_000.0), run(2, 20_000.0)).size())
        .isEqualTo(Size.SMALL);
  }

  @Test
  void afterThirtyDaysWithoutARunItIsAReturnAndNoSpike() {
    RunSpike spike = of(10_000, run(31, 20_000.0));
    assertThat(spike.size()).isNull();
    assertThat(spike.share()).isNull();
    assertThat(spike.because()).contains("return");
  }

  @Test
  void aRunOfNoDistanceIsNoSpikeAndOneOfNoneAtAllUnknown() {
    assertThat(of(0, run(3, 20_000.0)).size()).isEqualTo(Size.NONE);
    assertThat(of(Double.NaN, run(3, 20_000.0)).because()).contains("the run itself");
    assertThat(of(-1, run(3, 20_000.0)).size()).isNull();
  }

  @Test
  void aRunOfUnknownDistanceLeavesOnlyCertainQuiet() {
    assertThat(of(21_000, run(3, 20_000.0), run(2, null)).size()).isEqualTo(Size.NONE);
    assertThat(of(21_000, run(3, 20_000.0), run(2, null)).share()).isNull();
    assertThat(of(23_000, run(3, 20_000.0), run(2, null)).size()).isNull();
    assertThat(of(23_000, run(2, null)).because()).contains("distance");
  }

  private static void assertSpike(double km, double share, Size size) {
    RunSpike spike = of(1000 * km, run(3, 20_000.0), run(5, 12_000.0));
    assertThat(spike.share()).isCloseTo(share, within(0.0005));
    assertThat(spike.size()).isEqualTo(size);
    assertThat(spike.longest()).isEqualTo(20_000);
  }

  private static RunSpike of(double metres, RunSpike.Run... before) {
    return RunSpike.of(DAY, metres, List.of(before), CONSTANTS);
  }

  private static RunSpike.Run run(int daysBefore, Double metres) {
    return new RunSpike.Run(DAY.minusDays(daysBefore), metres);
  }
}
