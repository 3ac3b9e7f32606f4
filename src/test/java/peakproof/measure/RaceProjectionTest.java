package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static peakproof.measure.Lines.line;
import static peakproof.measure.Lines.metres;
import static peakproof.measure.Lines.minutes;
import static peakproof.measure.Lines.part;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import peakproof.document.Effort;
import peakproof.document.Event;
import peakproof.document.Log;
import peakproof.document.Session;
import peakproof.document.SetLine;
import peakproof.document.Sport;
import peakproof.document.Target;
import peakproof.measure.Athletes.Dated;

/** Allowances are common practice, no source; the arithmetic is worked in each test. */
class RaceProjectionTest {
  private static final Offset<Double> EXACT = within(1e-6);
  private static final Log RIDES =
      Athletes.log(
          new Dated("2027-05-01", Athletes.ride(240, 112)),
          new Dated("2027-05-08", Athletes.ride(240, 120)),
          new Dated("2027-05-15", Athletes.ride(240, 128)),
          new Dated("2027-05-16", Athletes.ride(60, 40)));

  @Test
  void swimFromCriticalSwimSpeed() {
    Projected.Range swim = project(Athletes.tove(), RIDES).swim().range();
    assertThat(swim.low()).isCloseTo(38 * 103.5 * 1.02, EXACT);
    assertThat(swim.likely()).isCloseTo(38 * 105.5 * 1.03, EXACT);
    assertThat(swim.high()).isCloseTo(38 * 107.5 * 1.05, EXACT);
  }

  @Test
  void swimFromTheNewestSetHeldAtGoalPace() {
    Log log =
        Athletes.log(
            new Dated("2027-05-10", heldSet(20, 1.12)),
            new Dated("2027-05-20", heldSet(20, 1.10)),
            new Dated("2027-05-25", heldSet(5, 1.00)),
            new Dated("2027-05-31", heldSet(20, 1.00)));
    Projected swim = project(Athletes.tove().withTests(), log).swim();
    assertThat(swim.range().low()).isCloseTo(38 * 110 * 1.02, EXACT);
    assertThat(swim.range().likely()).isCloseTo(38 * 110 * 1.03, EXACT);
    assertThat(swim.range().high()).isCloseTo(38 * 110 * 1.05, EXACT);
  }

  @Test
  void bikeFromTheMedianOfLongRides() {
    Projected.Range bike = project(Athletes.tove(), RIDES).bike().range();
    assertThat(bike.likely()).isCloseTo(6 * 3600, EXACT);
    assertThat(bike.low()).isCloseTo(6 * 3600 / 1.05, EXACT);
    assertThat(bike.high()).isCloseTo(6 * 3600 / 0.95, EXACT);
  }

  @Test
  void ridesOfRaceEffortComeFirst() {
    Session.Recorded atGoal =
        new Session.Recorded(4 * 3600.0, 130_000.0, null, 127.0, null, null, null);
    Session.Recorded bySetLine =
        new Session.Recorded(4 * 3600.0, 128_000.0, null, null, null, null, null);
    SetLine line = line(part(minutes(30), Effort.EASY), part(minutes(210), Effort.RACE));
    Log log =
        Athletes.log(
            new Dated("2027-05-01", Athletes.ride(240, 100)),
            new Dated("2027-05-02", Athletes.ride(240, 100)),
            new Dated("2027-05-03", Athletes.ride(240, 100)),
            new Dated("2027-05-08", Athletes.logged(Sport.BIKE, atGoal)),
            new Dated("2027-05-09", Athletes.session(Sport.BIKE, line, bySetLine, null, null)));
    assertThat(project(Athletes.tove(), log).bike().range().likely())
        .isCloseTo(180 / 32.25 * 3600, EXACT);
    // under a beta-blocker only the set line tells
    Athletes.Draft blocked = Athletes.tove().withConditions("beta-blocker");
    assertThat(project(blocked, log).bike().range().likely()).isCloseTo(180 / 32.0 * 3600, EXACT);
  }

  @Test
  void longRidesAreHalfAsLongOverShortCourses() {
    Log log = Athletes.log(new Dated("2027-05-01", Athletes.ride(90, 45)));
    Athletes.Draft standard =
        Athletes.tove().withLegs(new Event.Legs(1500.0, 40_000.0, 10_000.0), null);
    assertThat(project(standard, log).bike().range().likely()).isCloseTo(40 / 30.0 * 3600, EXACT);
    assertThat(project(Athletes.tove(), log).bike().range()).isNull();
  }

  @Test
  void runByBothExponentsTimesTheBand() {
    Projected.Range run = project(Athletes.tove(), RIDES).run().range();
    double usual = 6090 * Math.pow(2, 1.06);
    double cautious = 6090 * Math.pow(2, 1.10);
    assertThat(run.low()).isCloseTo(usual * 1.08, EXACT);
    assertThat(run.likely()).isCloseTo((usual + cautious) / 2 * 1.15, EXACT);
    assertThat(run.high()).isCloseTo(cautious * 1.30, EXACT);
  }

  @Test
  void sumsRunThroughTheLegs() {
    RaceProjection race = project(Athletes.tove(), RIDES);
    assertThat(race.transitions().range()).isEqualTo(new Projected.Range(600, 600, 600));
    assertThat(race.bikeEnd().range().low())
        .isCloseTo(race.swim().range().low() + 300 + race.bike().range().low(), EXACT);
    assertThat(race.finish().range().high())
        .isCloseTo(race.bikeEnd().range().high() + 300 + race.run().range().high(), EXACT);
    assertThat(race.finish().entries())
        .contains("/plan/goal/transitions", "/log/bike", race.run().entries().get(0));
  }

  @Test
  void unsaidTransitionsTakeFiveToFifteenMinutesEach() {
    RaceProjection race = project(Athletes.tove().withGoal(null), RIDES);
    assertThat(race.transitions().range()).isEqualTo(new Projected.Range(600, 1200, 1800));
  }

  @Test
  void theGoalIsNoEvidence() {
    RaceProjection race = project(Athletes.tove().withTests(), null);
    assertThat(race.swim().range()).isNull();
    assertThat(race.bike().range()).isNull();
    assertThat(race.run().range()).isNull();
    assertThat(race.bikeEnd().range()).isNull();
    assertThat(race.finish().range()).isNull();
    assertThat(race.finish().because()).contains("swim tests");
    assertThat(race.bike().because()).contains("rides");
    assertThat(race.run().because()).contains("run race or test");
  }

  @Test
  void lowIsNeverAboveLikelyNorLikelyAboveHigh() {
    for (double leg : new double[] {5000, 10_000, 21_097.5, 42_195}) {
      for (double test : new double[] {5000, 10_000, 21_097.5, 42_195}) {
        Athletes.Draft draft =
            Athletes.tove()
                .withLegs(new Event.Legs(1500.0, 40_000.0, leg), null)
                .withTests(Athletes.run("2027-05-01", test, test * 0.27));
        Projected.Range run = project(draft, null).run().range();
        assertThat(run.low()).isLessThanOrEqualTo(run.likely());
        assertThat(run.likely()).isLessThanOrEqualTo(run.high());
      }
    }
  }

  @Test
  void aRideAtTheGoalsPowerIsOneOfRaceEffortAndOneWithAFewMinutesIsNot() {
    Athletes.Draft watts =
        Athletes.tove()
            .withGoal(Athletes.goal(4200.0, 21_600.0, 13_800.0, 600.0, new Target.Power(150)));
    Session.Recorded atGoal =
        new Session.Recorded(4 * 3600.0, 130_000.0, null, null, 151.0, null, null);
    Session.Recorded easy =
        new Session.Recorded(4 * 3600.0, 100_000.0, null, null, 110.0, null, null);
    SetLine short9 = line(part(minutes(231), Effort.EASY), part(minutes(9), Effort.RACE));
    Log log =
        Athletes.log(
            new Dated("2027-05-01", Athletes.logged(Sport.BIKE, easy)),
            new Dated("2027-05-02", Athletes.session(Sport.BIKE, short9, easy, null, null)),
            new Dated("2027-05-08", Athletes.logged(Sport.BIKE, atGoal)));
    assertThat(project(watts, log).bike().range().likely()).isCloseTo(180 / 32.5 * 3600, EXACT);
  }

  @Test
  void aSwimSetUnderTenMinutesOrOfAnotherSportProvesNoPace() {
    Athletes.Draft untested = Athletes.tove().withTests();
    assertThat(
            project(untested, Athletes.log(new Dated("2027-05-20", heldSet(5, 1.1))))
                .swim()
                .range())
        .isNull();
    assertThat(
            project(untested, Athletes.log(new Dated("2027-05-20", heldSet(6, 1.1))))
                .swim()
                .range())
        .isNotNull();
    Session run =
        Athletes.session(
            Sport.RUN,
            line(part(20, metres(100), Effort.RACE, null, Lines.rest(10))),
            new Session.Recorded(null, null, null, null, null, 1.1, null),
            null,
            null);
    assertThat(project(untested, Athletes.log(new Dated("2027-05-20", run))).swim().range())
        .isNull();
  }

  @Test
  void legsAddUpInEveryColumn() {
    Projected one = Projected.of(new Projected.Range(1, 2, 3), List.of(), List.of());
    Projected other = Projected.of(new Projected.Range(10, 20, 30), List.of(), List.of());
    assertThat(one.then(other).range()).isEqualTo(new Projected.Range(11, 22, 33));
  }

  @Test
  void aSetOfThreeQuartersOfTheRaceSwimComesBeforeTests() {
    // three quarters of 3800 m are 2850 m
    Log enough = Athletes.log(new Dated("2027-05-20", heldSet(29, 1.10)));
    assertThat(project(Athletes.tove(), enough).swim().range().likely())
        .isCloseTo(38 * 110 * 1.03, EXACT);
    Log less = Athletes.log(new Dated("2027-05-20", heldSet(28, 1.10)));
    assertThat(project(Athletes.tove(), less).swim().range().likely())
        .isCloseTo(38 * 105.5 * 1.03, EXACT);
  }

  @Test
  void aSwimWithoutASetLineOrHeldAtNoPaceProvesNone() {
    Session.Recorded held = new Session.Recorded(null, null, null, null, null, 1.0, null);
    Log log =
        Athletes.log(
            new Dated("2027-05-18", heldSet(29, 1.10)),
            new Dated("2027-05-19", heldSet(29, Double.NaN)),
            new Dated("2027-05-20", Athletes.session(Sport.SWIM, null, held, null, null)));
    assertThat(project(Athletes.tove().withTests(), log).swim().range().likely())
        .isCloseTo(38 * 110 * 1.03, EXACT);
  }

  @Test
  void saysHowTheSwimWasComeByAndHowMuchASetWouldNarrowIt() {
    Projected swim = project(Athletes.tove(), null).swim();
    assertThat(swim.arithmetic())
        .containsExactly(
            "critical swim speed 1:42/100m by tests, 2 to 6 s/100 m slower over the race",
            "2 % to 5 % more than the straight line");
    // 2 s/100 m less at either end: 38 x (2 x 1.05 + 2 x 1.02)
    assertThat(swim.narrowing().seconds()).isCloseTo(157.32, EXACT);
  }

  @Test
  void oneLongRideIsNamedAsOne() {
    Log log = Athletes.log(new Dated("2027-05-01", Athletes.ride(240, 120)));
    assertThat(project(Athletes.tove(), log).bike().arithmetic())
        .containsExactly(
            "median speed 30 km/h of 1 logged long ride, none of them at race effort",
            "not by the power equation, which needs the athlete's `mass`");
    assertThat(project(Athletes.tove(), RIDES).bike().arithmetic().get(0))
        .isEqualTo("median speed 30 km/h of 3 logged long rides, none of them at race effort");
  }

  @Test
  void saysHowTheRunWasComeByAndHowMuchALongerRaceWouldNarrowIt() {
    Projected run = project(shortRace(2500, 600), null).run();
    // 600 s times 4 to the power of 1.06 and 1.10: 2608.2 and 2756.9 s
    assertThat(run.arithmetic())
        .containsExactly(
            "2.5 km in 10:00 on 2027-05-01 is 43:28 over the leg run fresh (exponent 1.06),"
                + " 45:57 (1.1)",
            "times 1.02 to 1.08 off the bike, likely 1.05");
    double now = 600 * (1.08 * Math.pow(4, 1.10) - 1.02 * Math.pow(4, 1.06));
    double half = 600 * (Math.pow(2, 1.06) + Math.pow(2, 1.10)) / 2;
    double then = half * (1.08 * Math.pow(2, 1.10) - 1.02 * Math.pow(2, 1.06));
    assertThat(run.narrowing().entry()).isEqualTo("a run race or test over 5 km or more");
    assertThat(run.narrowing().seconds()).isCloseTo(now - then, EXACT);
    assertThat(project(shortRace(10_000, 2600), null).run().narrowing()).isNull();
    assertThat(project(shortRace(5000, 1200), null).run().narrowing()).isNull();
  }

  @Test
  void aLoggedRunStraightOffTheBikeOfAQuarterHourStandsBeside() {
    assertThat(besides(offBike(Sport.BIKE, 900.0, 3000.0)))
        .isEqualTo("for comparison, median pace of 1 logged run off the bike: 5:00/km");
    // 300 and 310 s/km
    assertThat(besides(offBike(Sport.BIKE, 900.0, 3000.0), offBike(Sport.BIKE, 1550.0, 5000.0)))
        .isEqualTo("for comparison, median pace of 2 logged runs off the bike: 5:05/km");
    assertThat(besides(offBike(Sport.BIKE, 899.0, 3000.0))).isEmpty();
    assertThat(besides(offBike(Sport.SWIM, 900.0, 3000.0))).isEmpty();
    assertThat(besides(offBike(Sport.BIKE, 900.0, null))).isEmpty();
    assertThat(besides(offBike(Sport.BIKE, null, 3000.0))).isEmpty();
    assertThat(besides(offBike(Sport.BIKE, 900.0, 0.0))).isEmpty();
  }

  /** The third line on the run, of sessions of one day; empty without one. */
  private static String besides(Session... sessions) {
    Dated[] dated = new Dated[sessions.length];
    for (int i = 0; i < sessions.length; i++) {
      dated[i] = new Dated("2027-05-10", sessions[i]);
    }
    List<String> lines = project(Athletes.tove(), Athletes.log(dated)).run().arithmetic();
    return lines.size() > 2 ? lines.get(2) : "";
  }

  private static Session offBike(Sport first, Double seconds, Double metres) {
    Session run =
        Athletes.logged(
            Sport.RUN, new Session.Recorded(seconds, metres, null, null, null, null, null));
    Session.Recorded hour = new Session.Recorded(3600.0, null, null, null, null, null, null);
    return Athletes.session(first, null, hour, null, run);
  }

  /** Before 10 km off the bike. */
  private static Athletes.Draft shortRace(double metres, double seconds) {
    return Athletes.tove()
        .withLegs(new Event.Legs(1500.0, 40_000.0, 10_000.0), null)
        .withTests(Athletes.run("2027-05-01", metres, seconds));
  }

  private static Session heldSet(int count, double secondsPerMetre) {
    SetLine line = line(part(count, metres(100), Effort.RACE, null, Lines.rest(10)));
    Session.Recorded recorded =
        new Session.Recorded(null, null, null, null, null, secondsPerMetre, null);
    return Athletes.session(Sport.SWIM, line, recorded, null, null);
  }

  private static RaceProjection project(Athletes.Draft draft, Log log) {
    return RaceProjection.of(
        draft.plan(), log, Athletes.AS_OF, draft.calibration(log), ShippedConstants.constants());
  }
}
