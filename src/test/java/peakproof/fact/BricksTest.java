package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constant;
import peakproof.measure.ShippedConstants;

/** Plans of the week from Monday, 31 May; a ride on its Saturday unless told otherwise. */
class BricksTest {
  private static final String SATURDAY = "2027-06-05";

  @Test
  void aRunUnderThenComesOffItsRide() {
    Timeline timeline = saturday("{bike: 2h, then: {run: 20min easy}}");
    assertThat(rideOfRun(timeline)).isSameAs(Timelines.ride(timeline, SATURDAY));
  }

  @Test
  void aRunUnderThenNeedsNoClock() {
    Timeline timeline = saturday("{bike: 2h, at: 07:00, then: {run: 20min easy, at: 15:00}}");
    assertThat(rideOfRun(timeline)).isSameAs(Timelines.ride(timeline, SATURDAY));
  }

  @Test
  void theLastOfThreeComesOffTheRideAndNotTheSwim() {
    Timeline timeline =
        saturday("{swim: 2000 easy, then: {bike: 1h, then: {run: 20min easy}}}, {bike: 3h}");
    assertThat(rideOfRun(timeline)).isSameAs(Timelines.ride(timeline, SATURDAY));
  }

  @Test
  void aRunOfTheSameDayComesOffNoRide() {
    Timeline timeline = saturday("{bike: 2h}, {run: 20min easy}");
    assertThat(rideOfRun(timeline)).isNull();
    assertThat(timeline.bricks().all()).isEmpty();
  }

  @Test
  void aRunComesOffARideThatEndsAsItBegins() {
    assertThat(offBike("{bike: 1h, at: 07:00}, {run: 20min easy, at: 08:00}")).isTrue();
  }

  @Test
  void aRunThatBeginsBeforeTheRideEndsComesOffNone() {
    assertThat(offBike("{bike: 1h, at: 07:00}, {run: 20min easy, at: 07:59}")).isFalse();
    assertThat(offBike("{bike: 1h, at: 07:00}, {run: 20min easy, at: 06:00}")).isFalse();
  }

  @Test
  void aRunComesOffARideUpToAQuarterOfAnHourBefore() {
    assertThat(offBike("{bike: 1h, at: 07:00}, {run: 20min easy, at: 08:15}")).isTrue();
    assertThat(offBike("{bike: 1h, at: 07:00}, {run: 20min easy, at: 08:16}")).isFalse();
  }

  @Test
  void theClubSaysHowLongThePauseMayBe() {
    String week = week("sat", "{bike: 1h, at: 07:00}, {run: 20min easy, at: 08:10}");
    assertThat(withPauseOf(week, 10)).isNotNull();
    assertThat(withPauseOf(week, 9)).isNull();
  }

  @Test
  void theClockTellsInWhicheverOrderTheDayIsWritten() {
    assertThat(offBike("{run: 20min easy, at: 08:05}, {bike: 1h, at: 07:00}")).isTrue();
  }

  @Test
  void withoutBothTimesTheClockTellsNothing() {
    assertThat(offBike("{bike: 1h}, {run: 20min easy, at: 08:05}")).isFalse();
    assertThat(offBike("{bike: 1h, at: 07:00}, {run: 20min easy}")).isFalse();
  }

  @Test
  void theClockTellsNothingOfARideOfUnknownLength() {
    String log =
        Timelines.log(
            "2027-05-29: {sessions: [{bike: 30km, at: 07:00}, {run: 20min, at: 08:05}]}\n");
    Timeline timeline = Timelines.of(Timelines.plan("weeks: []"), log, "2027-05-30");
    assertThat(Timelines.ride(timeline, "2027-05-29").minutes()).isNull();
    assertThat(Timelines.run(timeline, "2027-05-29").offBike()).isFalse();
  }

  @Test
  void aSwimJustBeforeIsNoRide() {
    assertThat(offBike("{swim: 30min easy, at: 07:00}, {run: 20min easy, at: 07:35}")).isFalse();
  }

  @Test
  void aRunOutOfTheWaterComesOffNoRideWhateverTheClockSays() {
    String swimAndRun = "{swim: 30min easy, at: 08:00, then: {run: 20min easy, at: 08:30}}";
    assertThat(offBike("{bike: 1h, at: 07:20}, " + swimAndRun)).isFalse();
  }

  @Test
  void aRideOfAnotherDayIsNotJustBefore() {
    Timeline timeline =
        planned(
            """
            weeks:
              - starts: 2027-05-31
                days:
                  fri: [{bike: 1h, at: 07:00}]
                  sat: [{run: 20min easy, at: 08:05}]
            """);
    assertThat(rideOfRun(timeline)).isNull();
  }

  @Test
  void ofTwoRidesTheRunComesOffTheOneJustBefore() {
    Timeline timeline =
        saturday("{bike: 1h, at: 06:00}, {bike: 1h, at: 10:00}, {run: 20min easy, at: 11:05}");
    Ride second = Timelines.session(timeline, Ride.class, SATURDAY, 1);
    assertThat(rideOfRun(timeline)).isSameAs(second);
    assertThat(timeline.bricks().all()).extracting(Brick::ride).containsExactly(second);
  }

  @Test
  void listsThemByDateEachOnce() {
    Timeline timeline =
        planned(
            """
            weeks:
              - starts: 2027-05-31
                days:
                  sat: [{bike: 1h, then: {run: 20min easy}}]
                  sun: [{run: 1h easy}, {bike: 2h, then: {run: 15min easy}}]
                  tue: [{bike: 1h, at: 07:00}, {run: 10min easy, at: 08:00}]
            """);
    assertThat(timeline.bricks().all())
        .extracting(Brick::date)
        .containsExactly(
            LocalDate.parse("2027-06-01"),
            LocalDate.parse("2027-06-05"),
            LocalDate.parse("2027-06-06"));
  }

  @Test
  void thereAreNoneWithoutSessions() {
    assertThat(planned("weeks: []").bricks().all()).isEmpty();
  }

  @Test
  void measuresRideAndRunByGoalAndLeg() {
    Brick brick = logged("goal: {bike: 3:00:00}", "bike 1h30 + run 25min 4.22km");
    assertThat(brick.rideShare()).isEqualTo(0.5);
    // a half marathon is 21.0975 km
    assertThat(brick.runShare()).isCloseTo(4220 / 21097.5, within(1e-9));
  }

  @Test
  void theRideIsAShareOfNothingWithoutItsGoal() {
    assertThat(logged("goal: {run: 2:00:00}", "bike 1h30 + run 25min 4.22km").rideShare()).isNull();
    assertThat(logged("aims: []", "bike 1h30 + run 25min 4.22km").rideShare()).isNull();
  }

  @Test
  void theirSharesAreUnknownLikeTheirLengths() {
    Brick brick = logged("goal: {bike: 3:00:00}", "bike 40km + run 25min");
    assertThat(brick.rideShare()).isNull();
    assertThat(brick.runShare()).isNull();
  }

  @Test
  void theRunIsAShareOfNothingInARaceWithoutOne() {
    String event = "{name: Reedmere Half, date: 2027-07-11, legs: {swim: 1.9km, bike: 90km}}";
    String plan = Timelines.plan("{name: Lena Brandl}", event, "weeks: []");
    String log = Timelines.log("2027-05-29: bike 1h30 + run 25min 4.22km\n");
    Timeline timeline = Timelines.of(plan, log, "2027-05-30");
    assertThat(timeline.bricks().all()).hasSize(1);
    assertThat(timeline.bricks().all().get(0).runShare()).isNull();
  }

  @Test
  void theLongestRideWithinADayIsNoneWithoutRides() {
    assertThat(rideWithinDay("{swim: 2h easy}, {run: 1h easy}")).isZero();
  }

  @Test
  void theLongestRideWithinADayLeavesOutTheOneTheRunComesOff() {
    assertThat(rideWithinDay("{bike: 3h, then: {run: 1h easy}}")).isZero();
    assertThat(rideWithinDay("{bike: 1h}, {bike: 3h, then: {run: 1h easy}}")).isEqualTo(60);
  }

  @Test
  void theLongestRideWithinADayIsTheLongestAndNotTheLast() {
    assertThat(rideWithinDay("{bike: 2h}, {bike: 1h}, {run: 1h easy}")).isEqualTo(120);
  }

  @Test
  void theLongestRideWithinADayIsWrittenBeforeTheRun() {
    assertThat(rideWithinDay("{bike: 1h}, {run: 1h easy}, {bike: 3h}")).isEqualTo(60);
  }

  @Test
  void theLongestRideWithinADayMayBeOfTheEveAndNoEarlier() {
    Timeline timeline =
        planned(
            """
            weeks:
              - starts: 2027-05-31
                days:
                  thu: [{bike: 4h}]
                  fri: [{run: 10min easy}, {bike: 2h}]
                  sat: [{bike: 1h}, {run: 1h easy}]
                  sun: [{bike: 5h}]
            """);
    assertThat(Timelines.run(timeline, SATURDAY).rideWithinDayMinutes()).isEqualTo(120);
  }

  @Test
  void aRideOfUnknownLengthIsNotTheLongestWithinADay() {
    String log = Timelines.log("2027-05-29: bike 30km; bike 40min; run 20min\n");
    Timeline timeline = Timelines.of(Timelines.plan("weeks: []"), log, "2027-05-30");
    assertThat(Timelines.run(timeline, "2027-05-29").rideWithinDayMinutes()).isEqualTo(40);
  }

  @Test
  void theEveOfTheFirstDayOfAllHoldsNoRide() {
    Timeline timeline = planned(week("mon", "{bike: 1h}, {run: 1h easy}"));
    assertThat(Timelines.run(timeline, "2027-05-31").rideWithinDayMinutes()).isEqualTo(60);
  }

  private static Brick logged(String line, String day) {
    String plan = Timelines.plan(line + "\nweeks: []\n");
    Timeline timeline =
        Timelines.of(plan, Timelines.log("2027-05-29: " + day + "\n"), "2027-05-30");
    assertThat(timeline.bricks().all()).hasSize(1);
    return timeline.bricks().all().get(0);
  }

  @Test
  void theLongestRideWithinADayIsBeforeTheRunByTheClockWhereThereIsOne() {
    assertThat(rideWithinDay("{run: 1h easy, at: 17:00}, {bike: 3h, at: 07:00}")).isEqualTo(180);
    assertThat(rideWithinDay("{bike: 3h, at: 17:00}, {run: 1h easy, at: 07:00}")).isZero();
    assertThat(rideWithinDay("{bike: 3h, at: 17:00}, {run: 1h easy}")).isEqualTo(180);
  }

  private static boolean offBike(String sessions) {
    return Timelines.run(saturday(sessions), SATURDAY).offBike();
  }

  private static double rideWithinDay(String sessions) {
    return Timelines.run(saturday(sessions), SATURDAY).rideWithinDayMinutes();
  }

  private static Ride rideOfRun(Timeline timeline) {
    return timeline.bricks().ride(Timelines.run(timeline, SATURDAY));
  }

  private static Ride withPauseOf(String week, double minutes) {
    return rideOfRun(
        Timelines.of(
            Timelines.plan(week),
            null,
            "2027-05-30",
            ShippedConstants.with(Constant.BRICK_WITHIN, minutes)));
  }

  private static Timeline saturday(String sessions) {
    return planned(week("sat", sessions));
  }

  private static String week(String weekday, String sessions) {
    return "weeks: [{starts: 2027-05-31, days: {" + weekday + ": [" + sessions + "]}}]";
  }

  private static Timeline planned(String weeks) {
    return Timelines.of(Timelines.plan(weeks), null, "2027-05-30");
  }
}
