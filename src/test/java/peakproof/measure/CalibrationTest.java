package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static peakproof.measure.Athletes.ride;
import static peakproof.measure.Athletes.run;
import static peakproof.measure.Athletes.swim;
import static peakproof.measure.Athletes.tove;

import java.time.LocalDate;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import peakproof.document.Athlete;
import peakproof.document.Event;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.measure.Athletes.Dated;
import peakproof.measure.Reading.Origin;

class CalibrationTest {
  private static final Offset<Double> EXACT = within(1e-9);

  @Test
  void goalPacesComeFromGoalTimesAndLegs() {
    Calibration athlete = tove().calibration();
    assertThat(athlete.goalSwimPace().value()).isCloseTo(4200 / 38.0, EXACT);
    assertThat(athlete.goalBikeSpeed().value()).isCloseTo(30, EXACT);
    assertThat(athlete.goalRunPace().value()).isCloseTo(13_800 / 42.195, EXACT);
    assertThat(athlete.goalRunPace().origin()).isEqualTo(Origin.GOAL);
    assertThat(athlete.goalRunPace().entries()).containsExactly("/plan/goal/run");
  }

  @Test
  void goalPacesAreUnknownWithoutTimeOrLegAndSayWhich() {
    Calibration noTime =
        tove().withGoal(Athletes.goal(null, null, 13_800.0, null, null)).calibration();
    assertThat(noTime.goalSwimPace().known()).isFalse();
    assertThat(noTime.goalSwimPace().because()).contains("swim time");
    Calibration noLeg =
        tove().withLegs(new Event.Legs(null, 180_000.0, 42_195.0), null).calibration();
    assertThat(noLeg.goalSwimPace().because()).contains("swim leg");
  }

  @Test
  void swimTestsGiveCriticalSwimSpeed() {
    Calibration athlete = tove().calibration();
    assertThat(athlete.criticalSwimSpeed().value()).isCloseTo(200 / 203.0, EXACT);
    assertThat(athlete.swimReserve().value()).isCloseTo(200 - 185 * 200 / 203.0, EXACT);
    assertThat(athlete.thresholdSwimPace().value()).isCloseTo(101.5, EXACT);
    assertThat(athlete.thresholdSwimPace().tested()).isTrue();
    assertThat(athlete.criticalSwimSpeed().entries()).hasSize(2);
  }

  @Test
  void withoutSwimTestsThresholdIsTheGoalLessFourSecondsAndSaysSo() {
    Reading pace = tove().withTests().calibration().thresholdSwimPace();
    assertThat(pace.value()).isCloseTo(4200 / 38.0 - 4, EXACT);
    assertThat(pace.origin()).isEqualTo(Origin.GOAL);
    assertThat(tove().withTests().calibration().criticalSwimSpeed().known()).isFalse();
    assertThat(tove().withTests().withGoal(null).calibration().thresholdSwimPace().known())
        .isFalse();
  }

  @Test
  void newestTrialsThatFitTogetherCount() {
    // the newer pair is refused: its 400 m is as fast as its 200 m
    Calibration athlete =
        tove()
            .withTests(
                swim("2027-05-20", 400, 370),
                swim("2027-05-20", 200, 185),
                swim("2027-03-08", 400, 400),
                swim("2027-03-08", 200, 190))
            .calibration();
    assertThat(athlete.thresholdSwimPace().value()).isCloseTo(105, EXACT);
  }

  @Test
  void refusalIsTheReasonWhenNoTrialsFit() {
    Reading speed =
        tove()
            .withTests(swim("2027-05-20", 400, 370), swim("2027-05-20", 200, 185))
            .calibration()
            .criticalSwimSpeed();
    assertThat(speed.because()).contains("mis-paced");
  }

  @Test
  void trialsMoreThan21DaysApartDoNotGoTogether() {
    assertThat(speedOfTrials("2027-05-22", "2027-05-01").known()).isTrue();
    assertThat(speedOfTrials("2027-05-22", "2027-04-30").known()).isFalse();
  }

  @Test
  void testsAfterTheAsOfDateDoNotExistYet() {
    assertThat(speedOfTrials("2027-05-30", "2027-05-30").known()).isTrue();
    assertThat(speedOfTrials("2027-05-31", "2027-05-31").known()).isFalse();
    assertThat(tove().withTests(run("2027-05-31", 10_000, 2400)).calibration().runTest()).isNull();
  }

  @Test
  void ofTwoTrialsOverOneDistanceTheNewerCounts() {
    Calibration athlete =
        tove()
            .withTests(
                swim("2027-05-10", 400, 450),
                swim("2027-05-18", 400, 400),
                swim("2027-05-18", 200, 190))
            .calibration();
    assertThat(athlete.thresholdSwimPace().value()).isCloseTo(105, EXACT);
  }

  @Test
  void threeTrialsAreFittedByLeastSquares() {
    Calibration athlete =
        tove()
            .withTests(
                swim("2027-05-18", 800, 820),
                swim("2027-05-18", 400, 400),
                swim("2027-05-18", 200, 190))
            .calibration();
    assertThat(athlete.criticalSwimSpeed().entries()).hasSize(3);
    assertThat(athlete.thresholdSwimPace().value()).isBetween(105.0, 105.5);
  }

  @Test
  void veryShortAndVeryLongSwimsAreNoTrials() {
    assertThat(
            tove()
                .withTests(swim("2027-05-18", 3800, 4400), swim("2027-05-18", 200, 190))
                .calibration()
                .criticalSwimSpeed()
                .known())
        .isFalse();
    assertThat(
            tove()
                .withTests(swim("2027-05-18", 400, 400), swim("2027-05-18", 50, 35))
                .calibration()
                .criticalSwimSpeed()
                .known())
        .isFalse();
  }

  @Test
  void openMarathonPaceComesFromTheNewestRunTest() {
    Calibration athlete = tove().calibration();
    assertThat(athlete.openMarathonPace().value())
        .isCloseTo(6090 * Math.pow(2, 1.06) / 42.195, EXACT);
    assertThat(athlete.openMarathonPace().tested()).isTrue();
    Calibration newer =
        tove()
            .withTests(run("2027-04-18", 21_097.5, 6090), run("2027-05-18", 10_000, 2700))
            .calibration();
    assertThat(newer.openMarathonPace().value())
        .isCloseTo(2700 * Math.pow(4.2195, 1.06) / 42.195, EXACT);
  }

  @Test
  void runTestsCountForSixteenWeeks() {
    // 16 weeks before 2027-05-30 is 2027-02-07
    assertThat(tove().withTests(run("2027-02-07", 10_000, 2400)).calibration().runTest())
        .isNotNull();
    Calibration stale = tove().withTests(run("2027-02-06", 10_000, 2400)).calibration();
    assertThat(stale.runTest()).isNull();
    assertThat(stale.openMarathonPace().value()).isCloseTo(13_800 / 42.195 / 1.08, EXACT);
    assertThat(stale.openMarathonPace().origin()).isEqualTo(Origin.GOAL);
  }

  @Test
  void runTestsShorterThanThreeAndAHalfMinutesDoNotCount() {
    assertThat(tove().withTests(run("2027-05-18", 1000, 209)).calibration().runTest()).isNull();
    assertThat(tove().withTests(run("2027-05-18", 1000, 210)).calibration().runTest()).isNotNull();
  }

  @Test
  void rideSpeedIsTheMedianOfEightWeeksOfRidesWithDistanceAndTime() {
    // 8 weeks to 2027-05-30 begin on 2027-04-05
    Calibration athlete =
        tove()
            .calibration(
                Athletes.log(
                    new Dated("2027-04-04", ride(60, 50)),
                    new Dated("2027-04-05", ride(60, 24)),
                    new Dated("2027-05-01", ride(120, 56)),
                    new Dated("2027-05-30", ride(60, 32)),
                    new Dated("2027-05-31", ride(60, 50)),
                    new Dated("2027-05-02", Athletes.logged(Sport.BIKE, only(3600.0, null))),
                    new Dated("2027-05-03", Athletes.logged(Sport.RUN, only(3600.0, 12_000.0)))));
    assertThat(athlete.rideSpeed().value()).isCloseTo(28, EXACT);
    assertThat(athlete.rideSpeed().entries()).hasSize(3);
    assertThat(tove().calibration().rideSpeed().known()).isFalse();
  }

  @Test
  void aRideStraightOutOfTheWaterCounts() {
    Session swim = Athletes.session(Sport.SWIM, null, only(1800.0, 1500.0), null, ride(60, 29));
    assertThat(tove().calibration(Athletes.log(new Dated("2027-05-01", swim))).rideSpeed().value())
        .isCloseTo(29, EXACT);
  }

  @Test
  void aBetaBlockerTakesTheHeartRateOut() {
    assertThat(tove().calibration().heartRateUsable()).isTrue();
    assertThat(tove().withConditions("beta-blocker").calibration().heartRateUsable()).isFalse();
  }

  @Test
  void criticalPowerIsTheCoachsFigure() {
    assertThat(tove().calibration().criticalPower().origin()).isEqualTo(Origin.STATED);
    assertThat(tove().withFigures(null, null, null).calibration().criticalPower().known())
        .isFalse();
  }

  @Test
  void trialsOf90SecondsAnd20MinutesStillCount() {
    assertThat(
            tove()
                .withTests(swim("2027-05-18", 1220, 1200), swim("2027-05-18", 110, 90))
                .calibration()
                .criticalSwimSpeed()
                .value())
        .isCloseTo(1, EXACT);
  }

  @Test
  void ofOneDayTheFasterTrialOverADistanceCounts() {
    Calibration athlete =
        tove()
            .withTests(
                swim("2027-05-18", 400, 430),
                swim("2027-05-18", 400, 400),
                swim("2027-05-18", 200, 190))
            .calibration();
    assertThat(athlete.thresholdSwimPace().value()).isCloseTo(105, EXACT);
  }

  @Test
  void oneTrialAsksForTwo() {
    Reading speed =
        tove().withTests(swim("2027-05-18", 400, 400)).calibration().criticalSwimSpeed();
    assertThat(speed.because())
        .isEqualTo("two swim tests over different distances, such as 200 m and 400 m");
    assertThat(speed.tested()).isFalse();
  }

  @Test
  void aGoalPaceOfNoMoreThanTheAllowanceGivesNoThreshold() {
    Athletes.Draft fast = tove().withTests().withGoal(Athletes.goal(152.0, null, null, null, null));
    assertThat(fast.calibration().thresholdSwimPace().known()).isFalse();
  }

  @Test
  void aNewerTestByTimeHidesNoRace() {
    Athlete.Test byTime =
        new Athlete.Test(
            "/t", LocalDate.of(2027, 5, 20), Sport.RUN, null, 1800.0, 1800.0, null, 165.0);
    Calibration athlete = tove().withTests(run("2027-05-01", 10_000, 2700), byTime).calibration();
    assertThat(athlete.runTest().metres()).isEqualTo(10_000);
  }

  @Test
  void entriesOfTheRideSpeedAreItsRides() {
    assertThat(
            tove()
                .calibration(Athletes.log(new Dated("2027-05-01", ride(60, 29))))
                .rideSpeed()
                .entries())
        .containsExactly("/log/bike");
    assertThat(tove().calibration().goalSwimPace().tested()).isFalse();
  }

  private static Reading speedOfTrials(String four, String two) {
    return tove()
        .withTests(swim(four, 400, 400), swim(two, 200, 190))
        .calibration()
        .criticalSwimSpeed();
  }

  private static Session.Recorded only(Double seconds, Double metres) {
    return new Session.Recorded(seconds, metres, null, null, null, null, null);
  }
}
