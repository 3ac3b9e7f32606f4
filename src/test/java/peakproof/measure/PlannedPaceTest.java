package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import peakproof.document.Effort;
import peakproof.document.Sport;

/** What an effort word says of pace where no ride was logged. */
class PlannedPaceTest {
  @ParameterizedTest
  @EnumSource(Effort.class)
  void knowsNoPaceOfARideWithoutOneInTheLog(Effort effort) {
    Calibration athlete = Athletes.tove().calibration();
    Double pace = PlannedPace.of(effort, Sport.BIKE, athlete, ShippedConstants.constants());
    if (effort == Effort.RACE) {
      assertThat(Objects.requireNonNull(pace)).isPositive();
    } else {
      assertThat(pace).isNull();
    }
  }
}
