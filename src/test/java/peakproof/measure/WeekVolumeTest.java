package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The usual week: the median of the last four that are not lighter; common practice, no source. */
class WeekVolumeTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void theUsualWeekIsTheMedianOfTheLastFourThatAreNotLighter() {
    assertThat(usual(900.0, 100.0, 300.0, 200.0, 400.0)).isEqualTo(250);
    List<WeekVolume> weeks = new ArrayList<>(weeks(100.0, 300.0, 200.0, 400.0));
    weeks.add(new WeekVolume(5.0, true));
    assertThat(WeekVolume.usual(weeks, CONSTANTS)).isEqualTo(250);
  }

  @Test
  void threeOfTheFourAreEnoughAndTwoAreNot() {
    assertThat(usual(100.0, 300.0, null, 200.0)).isEqualTo(200);
    assertThat(usual(100.0, null, null, 200.0)).isNull();
    assertThat(usual(100.0, 300.0)).isNull();
    assertThat(usual()).isNull();
  }

  @Test
  void whatIsNoAmountCountsAsUnknown() {
    assertThat(usual(100.0, 300.0, Double.NaN, 200.0)).isEqualTo(200);
    assertThat(usual(100.0, 300.0, -1.0, 200.0)).isEqualTo(200);
    assertThat(usual(100.0, -1.0, Double.POSITIVE_INFINITY, 200.0)).isNull();
  }

  private static Double usual(Double... amounts) {
    return WeekVolume.usual(weeks(amounts), CONSTANTS);
  }

  private static List<WeekVolume> weeks(Double... amounts) {
    List<WeekVolume> weeks = new ArrayList<>();
    for (Double amount : amounts) {
      weeks.add(new WeekVolume(amount, false));
    }
    return weeks;
  }
}
