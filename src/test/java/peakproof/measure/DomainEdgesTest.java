package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static peakproof.measure.Domain.HEAVY;
import static peakproof.measure.Domain.MODERATE;
import static peakproof.measure.Domain.SEVERE;

import org.junit.jupiter.api.Test;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.document.Target;

/** Edges of the domains: common practice, no source. The athlete: 218 W, 182 and 46 bpm. */
class DomainEdgesTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final Calibration TOVE = Athletes.tove().calibration();
  private static final Calibration BLOCKED =
      Athletes.tove().withConditions("beta-blocker").calibration();

  @Test
  void powerIsModerateBelowFourFifthsAndSevereAboveCriticalPower() {
    assertThat(of(Sport.BIKE, new Target.Power(0.80 * 218 - 0.1))).isEqualTo(MODERATE);
    assertThat(of(Sport.BIKE, new Target.Power(0.80 * 218))).isEqualTo(HEAVY);
    assertThat(of(Sport.BIKE, new Target.Power(218))).isEqualTo(HEAVY);
    assertThat(of(Sport.BIKE, new Target.Power(218.1))).isEqualTo(SEVERE);
    assertThat(of(Sport.BIKE, new Target.ShareOfCriticalPower(0.79))).isEqualTo(MODERATE);
    assertThat(of(Sport.BIKE, new Target.ShareOfCriticalPower(1.0))).isEqualTo(HEAVY);
    assertThat(of(Sport.RUN, new Target.Power(250))).isNull();
  }

  @Test
  void swimPaceIsModerateMoreThanEightSecondsBehindCriticalSwimSpeedAndSevereAheadOfIt() {
    assertThat(of(Sport.SWIM, new Target.Pace(1.0960))).isEqualTo(MODERATE);
    assertThat(of(Sport.SWIM, new Target.Pace(1.0950))).isEqualTo(HEAVY);
    assertThat(of(Sport.SWIM, new Target.Pace(1.0151))).isEqualTo(HEAVY);
    assertThat(of(Sport.SWIM, new Target.Pace(1.0149))).isEqualTo(SEVERE);
  }

  @Test
  void runPaceGoesByTheOpenMarathonPace() {
    double open = TOVE.openMarathonPace().value() / 1000;
    assertThat(of(Sport.RUN, new Target.Pace(1.061 * open))).isEqualTo(MODERATE);
    assertThat(of(Sport.RUN, new Target.Pace(1.059 * open))).isEqualTo(HEAVY);
    assertThat(of(Sport.RUN, new Target.Pace(0.901 * open))).isEqualTo(HEAVY);
    assertThat(of(Sport.RUN, new Target.Pace(0.899 * open))).isEqualTo(SEVERE);
  }

  @Test
  void heartRateLiesFourBeatsLowerOnTheBike() {
    // 80 % of 182 is 145.6, 88 % is 160.16
    assertThat(of(Sport.RUN, new Target.HeartRate(145.6))).isEqualTo(MODERATE);
    assertThat(of(Sport.RUN, new Target.HeartRate(145.7))).isEqualTo(HEAVY);
    assertThat(of(Sport.RUN, new Target.HeartRate(160.2))).isEqualTo(SEVERE);
    assertThat(of(Sport.BIKE, new Target.HeartRate(141.6))).isEqualTo(MODERATE);
    assertThat(of(Sport.BIKE, new Target.HeartRate(141.7))).isEqualTo(HEAVY);
    assertThat(of(Sport.BIKE, new Target.HeartRate(156.2))).isEqualTo(SEVERE);
    assertThat(of(Sport.SWIM, new Target.HeartRate(140))).isNull();
  }

  @Test
  void sharesOfMaximumAndReserve() {
    assertThat(of(Sport.RUN, new Target.ShareOfMaximum(0.80))).isEqualTo(MODERATE);
    assertThat(of(Sport.RUN, new Target.ShareOfMaximum(0.81))).isEqualTo(HEAVY);
    // 46 + 0.75 x 136 = 148 bpm
    assertThat(of(Sport.RUN, new Target.ShareOfReserve(0.75))).isEqualTo(HEAVY);
    Calibration noFigures = Athletes.tove().withFigures(null, null, null).calibration();
    assertThat(DomainEdges.of(new Target.ShareOfMaximum(0.9), Sport.RUN, noFigures, CONSTANTS))
        .isEqualTo(SEVERE);
    assertThat(DomainEdges.of(new Target.ShareOfMaximum(0.9), Sport.BIKE, noFigures, CONSTANTS))
        .isNull();
    assertThat(DomainEdges.of(new Target.ShareOfReserve(0.9), Sport.RUN, noFigures, CONSTANTS))
        .isNull();
  }

  @Test
  void underABetaBlockerNoHeartRateSaysAnything() {
    assertThat(DomainEdges.of(new Target.HeartRate(170), Sport.RUN, BLOCKED, CONSTANTS)).isNull();
    assertThat(DomainEdges.of(new Target.ShareOfMaximum(0.9), Sport.RUN, BLOCKED, CONSTANTS))
        .isNull();
    assertThat(
            DomainEdges.ofLogged(recorded(4.0, 170.0, null, null), Sport.RUN, BLOCKED, CONSTANTS))
        .isEqualTo(MODERATE);
  }

  @Test
  void ratingIsModerateUpToFourAndSevereFromSeven() {
    assertThat(of(Sport.SWIM, new Target.Rating(4))).isEqualTo(MODERATE);
    assertThat(of(Sport.SWIM, new Target.Rating(4.5))).isEqualTo(HEAVY);
    assertThat(of(Sport.SWIM, new Target.Rating(6.5))).isEqualTo(HEAVY);
    assertThat(of(Sport.SWIM, new Target.Rating(7))).isEqualTo(SEVERE);
  }

  @Test
  void aLoggedSessionGoesByPowerThenPaceThenHeartRateThenRating() {
    assertThat(logged(Sport.BIKE, recorded(9.0, 170.0, 100.0, null))).isEqualTo(MODERATE);
    assertThat(logged(Sport.BIKE, recorded(2.0, 170.0, null, null))).isEqualTo(SEVERE);
    assertThat(logged(Sport.SWIM, recorded(2.0, null, null, 1.05))).isEqualTo(HEAVY);
    assertThat(logged(Sport.RUN, recorded(7.0, null, 250.0, null))).isEqualTo(SEVERE);
    assertThat(logged(Sport.RUN, Session.Recorded.NOTHING)).isNull();
  }

  private static Domain of(Sport sport, Target target) {
    return DomainEdges.of(target, sport, TOVE, CONSTANTS);
  }

  private static Domain logged(Sport sport, Session.Recorded recorded) {
    return DomainEdges.ofLogged(recorded, sport, TOVE, CONSTANTS);
  }

  private static Session.Recorded recorded(Double rpe, Double bpm, Double watts, Double held) {
    return new Session.Recorded(3600.0, null, rpe, bpm, watts, held, null);
  }
}
