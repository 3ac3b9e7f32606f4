package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constant;
import peakproof.measure.ShippedConstants;

/**
 * Plans of one week from Monday, 31 May. The eight weeks before that Monday begin on 5 April and
 * end on 30 May, the as-of date.
 */
class LongSessionsTest {
  private static final Offset<Double> EXACT = within(1e-9);
  private static final String MONDAY = "2027-05-31";
  private static final String EVE = "2027-05-30";

  @Test
  void aRideIsLongFromTheUsualMinutesWhereNothingBeforeIsKnown() {
    assertThat(Timelines.ride(monday("{bike: 3h}", null), MONDAY).longRide()).isTrue();
    assertThat(Timelines.ride(monday("{bike: 2h59}", null), MONDAY).longRide()).isFalse();
  }

  @Test
  void aRunIsLongFromItsOwnUsualMinutes() {
    assertThat(Timelines.run(monday("{run: 75min}", null), MONDAY).longRun()).isTrue();
    assertThat(Timelines.run(monday("{run: 74min}", null), MONDAY).longRun()).isFalse();
  }

  @Test
  void halfTheUsualMinutesAreLongForAShortRace() {
    String plan =
        Timelines.plan(
            "{name: Lena Brandl}",
            "{name: Reedmere Standard, date: 2027-07-11,"
                + " legs: {swim: 1.5km, bike: 40km, run: 10km}}",
            week("{bike: 1h30}, {run: 30min}"));
    Timeline timeline = Timelines.of(plan, null, EVE);
    assertThat(least(timeline, Timelines.ride(timeline, MONDAY))).isCloseTo(90, EXACT);
    assertThat(least(timeline, Timelines.run(timeline, MONDAY))).isCloseTo(37.5, EXACT);
  }

  @Test
  void aShareOfTheLongestIsLongWhereThatIsLess() {
    String log = complete("2027-04-05", "2h");
    assertThat(Timelines.ride(monday("{bike: 1h30}", log), MONDAY).longRide()).isTrue();
    assertThat(Timelines.ride(monday("{bike: 1h29}", log), MONDAY).longRide()).isFalse();
  }

  @Test
  void aShareOfTheLongestNeverAsksForMoreThanUsual() {
    String log = complete("2027-04-05", "5h");
    assertThat(leastOfMonday(log, 0.7)).isCloseTo(180, EXACT);
  }

  @Test
  void aShareOfTheLongestCountsOnceEnoughDaysBeforeAreKnown() {
    // 42 of 56 days are three quarters
    String log = complete("2027-04-19", "2h");
    assertThat(leastOfMonday(log, 0.75)).isCloseTo(90, EXACT);
  }

  @Test
  void aShareOfTheLongestSaysNothingWhileTooFewDaysBeforeAreKnown() {
    String log = complete("2027-04-20", "2h");
    assertThat(leastOfMonday(log, 0.75)).isCloseTo(180, EXACT);
  }

  @Test
  void whatTheCoachStatesIsNoMeasureOfALongRideWhileTheDaysAreUnknown() {
    String plan =
        Timelines.plan("{name: Lena Brandl, lately: {longest-ride: 2h}}", week("{bike: 2h}"));
    Timeline timeline = Timelines.of(plan, null, EVE);
    assertThat(longest(timeline, Timelines.ride(timeline, MONDAY))).isEqualTo(120);
    assertThat(least(timeline, Timelines.ride(timeline, MONDAY))).isCloseTo(180, EXACT);
  }

  @Test
  void theLongestIsThatOfTheSameSport() {
    Timeline timeline =
        monday(
            "{bike: 1h}, {run: 30min}, {swim: 2000 easy}",
            Timelines.log("2027-05-10: bike 2h; run 50min\n2027-05-11: bike 1h30; run 40min\n"));
    assertThat(longest(timeline, Timelines.ride(timeline, MONDAY))).isEqualTo(120);
    assertThat(longest(timeline, Timelines.run(timeline, MONDAY))).isEqualTo(50);
    assertThat(longest(timeline, Timelines.session(timeline, Swim.class, MONDAY, 0))).isNull();
  }

  @Test
  void theLongestReachesBackEightWeeksAndNoFurther() {
    assertThat(longestBeforeMonday("2027-04-05: bike 2h\n")).isEqualTo(120);
    assertThat(longestBeforeMonday("2027-04-04: bike 2h\n")).isNull();
  }

  @Test
  void theLongestIsOfTheDaysBeforeAndNotOfTheDayItself() {
    Timeline timeline = monday("{bike: 3h}, {bike: 1h}", Timelines.log("2027-05-30: bike 40min\n"));
    Ride second = Timelines.session(timeline, Ride.class, MONDAY, 1);
    assertThat(longest(timeline, second)).isEqualTo(40);
  }

  @Test
  void theLongestMayBePlannedItself() {
    String plan =
        Timelines.plan(
            """
            weeks:
              - starts: 2027-05-31
                days: {mon: [{bike: 2h}], tue: [{bike: 1h}], wed: [{bike: 4h}]}
            """);
    Timeline timeline = Timelines.of(plan, null, EVE);
    assertThat(longest(timeline, Timelines.ride(timeline, "2027-06-01"))).isEqualTo(120);
  }

  @Test
  void aRideOfUnknownLengthIsNotTheLongest() {
    assertThat(longestBeforeMonday("2027-05-10: bike 90km\n2027-05-11: bike 1h\n")).isEqualTo(60);
    assertThat(longestBeforeMonday("2027-05-10: bike 90km\n")).isNull();
  }

  @Test
  void theLongerOfLogAndStatementIsTheLongest() {
    String athlete = "{name: Lena Brandl, lately: {longest-ride: 2h, longest-run: 40min}}";
    String plan = Timelines.plan(athlete, week("{bike: 1h}, {run: 30min}"));
    String log = Timelines.log("2027-05-10: bike 1h30; run 50min\n");
    Timeline timeline = Timelines.of(plan, log, EVE);
    assertThat(longest(timeline, Timelines.ride(timeline, MONDAY))).isEqualTo(120);
    assertThat(longest(timeline, Timelines.run(timeline, MONDAY))).isEqualTo(50);
  }

  @Test
  void aStatementSaysNothingOfASportItLeavesOut() {
    String athlete = "{name: Lena Brandl, lately: {longest-run: 40min, longest-swim: 2km}}";
    String plan = Timelines.plan(athlete, week("{bike: 1h}, {swim: 2000 easy}"));
    Timeline timeline = Timelines.of(plan, null, EVE);
    assertThat(longest(timeline, Timelines.ride(timeline, MONDAY))).isNull();
    assertThat(longest(timeline, Timelines.session(timeline, Swim.class, MONDAY, 0))).isNull();
  }

  @Test
  void aStatementCountsWhileTheEightWeeksBeginBeforeTheAsOfDate() {
    String plan =
        Timelines.plan(
            "{name: Lena Brandl, lately: {longest-ride: 2h}}",
            "weeks: [{starts: 2027-06-21, days: {sat: [{bike: 1h}]}}]");
    Timeline timeline = Timelines.of(plan, null, "2027-05-02");
    assertThat(longest(timeline, Timelines.ride(timeline, "2027-06-26"))).isEqualTo(120);
    Timeline dayEarlier = Timelines.of(plan, null, "2027-05-01");
    assertThat(longest(dayEarlier, Timelines.ride(dayEarlier, "2027-06-26"))).isNull();
  }

  @Test
  void theLongestIsLoggedWhileTheLogIsFreshEnough() {
    String log = "2027-05-27: bike 2h\n";
    Timeline timeline = monday("{bike: 1h}", Timelines.log(log));
    assertThat(Timelines.ride(timeline, MONDAY).longestIsLogged()).isTrue();
  }

  @Test
  void theLongestIsNotLoggedOnceTheLogIsOld() {
    String log = "2027-05-26: bike 2h\n";
    Timeline timeline = monday("{bike: 1h}", Timelines.log(log));
    assertThat(Timelines.ride(timeline, MONDAY).longestIsLogged()).isFalse();
  }

  @Test
  void anOldLogStillTellsTheLongestBeforeASessionThatItHolds() {
    String log = "2027-05-10: bike 2h\n2027-05-20: bike 1h\n";
    Timeline timeline = monday("{bike: 1h}", Timelines.log(log));
    assertThat(Timelines.ride(timeline, "2027-05-20").longestIsLogged()).isTrue();
  }

  /** Complete from a day on, with one ride within. */
  private static String complete(String since, String ride) {
    return Timelines.log(
        since, since + ": rest\n2027-05-15: bike " + ride + "\n2027-05-30: rest\n");
  }

  private static double leastOfMonday(String log, double coverage) {
    Timeline timeline =
        Timelines.of(
            Timelines.plan(week("{bike: 1h}")),
            log,
            EVE,
            ShippedConstants.with(Constant.COVERAGE_LEAST, coverage));
    return least(timeline, Timelines.ride(timeline, MONDAY));
  }

  private static Double longestBeforeMonday(String days) {
    Timeline timeline = monday("{bike: 1h}", Timelines.log(days));
    return longest(timeline, Timelines.ride(timeline, MONDAY));
  }

  private static double least(Timeline timeline, Session session) {
    return timeline.longSessions().leastMinutes(session);
  }

  private static Double longest(Timeline timeline, Session session) {
    return timeline.longSessions().longestBefore(session);
  }

  private static Timeline monday(String sessions, String log) {
    return Timelines.of(Timelines.plan(week(sessions)), log, EVE);
  }

  private static String week(String sessions) {
    return "weeks: [{starts: 2027-05-31, days: {mon: [" + sessions + "]}}]";
  }
}
