package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import peakproof.measure.Athletes;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.Pace;
import peakproof.measure.Projected;
import peakproof.measure.RaceProjection;
import peakproof.measure.ShippedConstants;

/**
 * The marathon leg against a marathon run fresh: bands are common practice, no source (no good
 * cohort was found). 3:30 fresh times 1.10 is 3:51:00.
 */
class MarathonLegTest {
  private static final double THREE_THIRTY = 210 * 60;

  @Test
  void marathonOf330TimesItsBand() {
    Projected.Range range = run(ShippedConstants.with(Constant.RUN_LEG_FULL_LIKELY, 1.10));
    assertThat(range.likely()).isCloseTo(3 * 3600 + 51 * 60, within(1e-6));
    assertThat(range.low()).isCloseTo(THREE_THIRTY * 1.08, within(1e-6));
    assertThat(range.high()).isCloseTo(THREE_THIRTY * 1.30, within(1e-6));
  }

  @Test
  void shippedLikelyValueIs115() {
    assertThat(run(ShippedConstants.constants()).likely())
        .isCloseTo(THREE_THIRTY * 1.15, within(1e-6));
  }

  private static Projected.Range run(Constants constants) {
    Athletes.Draft draft =
        Athletes.tove().withTests(Athletes.run("2027-05-02", Pace.MARATHON, THREE_THIRTY));
    return RaceProjection.of(draft.plan(), null, Athletes.AS_OF, draft.calibration(), constants)
        .run()
        .range();
  }
}
