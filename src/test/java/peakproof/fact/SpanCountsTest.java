package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * What is counted of the week from Monday, 24 May, all of it logged, or of the planned one after.
 */
class SpanCountsTest {
  private static final String GOALS = "goal: {swim: 35min, run: 1:50:00}\n";

  @Test
  void openWaterSwimsAreInDoubtWhileTheLogNeverSaysWhere() {
    assertThat(done("openWaterSwims", "{swim: 2km}"))
        .isEqualTo(new Tally(0, "where of the swims in the log"));
    assertThat(done("openWaterSwims", "{swim: 2km}, {swim: 1km, where: open-water}"))
        .isEqualTo(Tally.certain(1));
    assertThat(planned("openWaterSwims", "{swim: 2km}")).isEqualTo(Tally.certain(0));
  }

  @Test
  void aStatedOpenWaterSwimCountsOnceWithinItsSpan() {
    assertThat(doneLately("open-water: 2027-05-24", "openWaterSwims", "{swim: 2km}").value())
        .isEqualTo(1);
    assertThat(doneLately("open-water: 2027-05-30", "openWaterSwims", "{swim: 2km}").value())
        .isEqualTo(1);
    assertThat(doneLately("open-water: 2027-05-23", "openWaterSwims", "{swim: 2km}").value())
        .isZero();
  }

  @Test
  void aStatedOpenWaterSwimIsNotAddedToThoseLogged() {
    String swims = "{swim: 2km, where: open-water}, {swim: 1km, where: open-water}";
    assertThat(doneLately("open-water: 2027-05-24", "openWaterSwims", swims))
        .isEqualTo(Tally.certain(2));
  }

  @Test
  void suitlessSwimsAndThoseInASuitAreNotTheSame() {
    String swims =
        "{swim: 2km, where: open-water, kit: [wetsuit]}, {swim: 1km, where: open-water},"
            + " {swim: 1km, where: open-water}, {swim: 1km, where: pool}";
    assertThat(done("suitlessSwims", swims)).isEqualTo(Tally.certain(2));
    assertThat(done("wetsuitSwims", swims)).isEqualTo(Tally.certain(1));
  }

  @Test
  void theLongestSwimInASuitIsInOne() {
    String swims = "{swim: 40min easy, kit: [wetsuit]}, {swim: 1h easy}";
    assertThat(planned("longestWetsuitSwimMinutes", swims)).isEqualTo(Tally.certain(40));
  }

  @Test
  void theLongestSwimIsWithoutARealRestAndARepetitionIsOne() {
    String swim = "{swim: \"4x400 easy r10s, 100 easy r3min, 600 easy\"}";
    assertThat(planned("longestSwimMetres", swim)).isEqualTo(Tally.certain(1700));
    assertThat(planned("longestRepetitionMetres", swim)).isEqualTo(Tally.certain(600));
  }

  @Test
  void theLongestSwimOfALogWithoutSetLinesIsInDoubt() {
    Tally doubtful = new Tally(0, "set lines of the swims in the log");
    assertThat(done("longestSwimMetres", "{swim: 2km}")).isEqualTo(doubtful);
    assertThat(done("longestRepetitionMetres", "{swim: 2km}")).isEqualTo(doubtful);
    assertThat(done("goalPaceSwimMetres", "{swim: 2km}")).isEqualTo(doubtful);
  }

  @Test
  void theLongestSwimMayBeStated() {
    String swim = "{swim: \"1000 easy\"}";
    assertThat(doneLately("longest-swim: 3km", "longestSwimMetres", swim).value()).isEqualTo(3000);
    assertThat(doneLately("longest-swim: 800m", "longestSwimMetres", swim).value()).isEqualTo(1000);
    assertThat(doneLately("longest-swim: 3km", "longestRepetitionMetres", swim).value())
        .isEqualTo(1000);
  }

  @Test
  void metresAtGoalPaceAreThoseOfOneSwim() {
    assertThat(planned("goalPaceSwimMetres", "{swim: \"400 easy, 600 race\"}, {swim: 500 race}"))
        .isEqualTo(Tally.certain(600));
  }

  @Test
  void eachSkillIsCountedByItself() {
    String swims =
        "{swim: 2km, practise: [sighting]}, {swim: 2km, practise: [sighting, both-sides]},"
            + " {swim: 1km, practise: [sighting, both-sides, fast-start]}";
    assertThat(done("sightingSwims", swims)).isEqualTo(Tally.certain(3));
    assertThat(done("bothSidesSwims", swims)).isEqualTo(Tally.certain(2));
    assertThat(done("fastStartSwims", swims)).isEqualTo(Tally.certain(1));
  }

  @Test
  void aSkillIsInDoubtWhileTheLogNeverListsAny() {
    assertThat(done("sightingSwims", "{swim: 2km}"))
        .isEqualTo(new Tally(0, "practise of the swims in the log"));
  }

  @Test
  void swimsInCompanyAreThoseInAGroupOrSupervised() {
    String swims =
        "{swim: 2km, company: group}, {swim: 2km, company: supervised},"
            + " {swim: 1km, company: alone}";
    assertThat(done("swimsInCompany", swims)).isEqualTo(Tally.certain(2));
    assertThat(done("swimsInCompany", "{swim: 2km}"))
        .isEqualTo(new Tally(0, "company of the swims"));
  }

  @Test
  void briskSwimsAndRidesAreCountedApart() {
    String sessions = "{swim: 1000 hard}, {swim: 1000 easy}, {bike: 1h hard}, {bike: 40min hard}";
    assertThat(planned("briskSwims", sessions)).isEqualTo(Tally.certain(1));
    assertThat(planned("briskRides", sessions)).isEqualTo(Tally.certain(2));
  }

  @Test
  void aRideOfUnknownLengthIsADoubtAboutTheLongest() {
    assertThat(done("longestRideMinutes", "{bike: 2h}, {bike: 30km}"))
        .isEqualTo(new Tally(120, "time of the rides"));
  }

  @Test
  void theLongestRideAndRunMayBeStatedInAnyLength() {
    String lately = "longest-ride: 4h, longest-run: 1h20";
    assertThat(doneLately(lately, "longestRideMinutes", "{bike: 2h}"))
        .isEqualTo(Tally.certain(240));
    assertThat(doneLately(lately, "longestRideMinutes", "{bike: 5h}"))
        .isEqualTo(Tally.certain(300));
    assertThat(doneLately(lately, "longestRunMinutes", "{run: 1h}")).isEqualTo(Tally.certain(80));
  }

  @Test
  void aStatementSaysNothingOfASpanStillToCome() {
    String plan =
        Timelines.plan(
            "{name: Lena Brandl, lately: {longest-ride: 4h, longest-run: 2h, longest-swim: 3km}}",
            week("{bike: 2h}, {run: 1h}, {swim: 1000 easy}"));
    Tallies tallies =
        new Tallies(
            Timelines.span(Timelines.of(plan, null, "2027-05-30"), "2027-05-31", "2027-06-06"));
    assertThat(tallies.get("longestRideMinutes")).isEqualTo(Tally.certain(120));
    assertThat(tallies.get("longestRunMinutes")).isEqualTo(Tally.certain(60));
    assertThat(tallies.get("longestSwimMetres")).isEqualTo(Tally.certain(1000));
  }

  @Test
  void onlyLongRidesAreLong() {
    String rides =
        "{bike: 3h, climb: 900m, distance: 90km}, {bike: 1h, climb: 900m, distance: 30km}";
    assertThat(done("longRides", rides)).isEqualTo(Tally.certain(1));
    assertThat(done("longRideClimbRate", rides)).isEqualTo(Tally.certain(10));
  }

  @Test
  void aLongRideWithoutItsClimbIsADoubtAboutTheHilliest() {
    assertThat(done("longRideClimbRate", "{bike: 4h, distance: 100km}"))
        .isEqualTo(new Tally(0, "climb and distance of the long rides"));
  }

  @Test
  void theShareOfRaceEffortIsThatOfTheLongRideWithMost() {
    String rides = "{bike: \"3h easy, 1h race\"}, {bike: \"2h easy, 2h race\"}, {bike: 1h race}";
    assertThat(planned("longRideEffortShare", rides)).isEqualTo(Tally.certain(0.5));
  }

  @Test
  void theShareInRacePositionIsOfTheTimeOfLongRides() {
    String rides = "{bike: 3h, aero: 1h}, {bike: 5h, aero: 3h}, {bike: 1h, aero: 1h}";
    assertThat(done("aeroShare", rides)).isEqualTo(Tally.certain(0.5));
    assertThat(done("aeroShare", "{bike: 4h}")).isEqualTo(new Tally(0, "aero of the long rides"));
  }

  @Test
  void theGroupShareIsOfTheTimeOfLongRides() {
    String rides = "{bike: 3h, company: group}, {bike: 5h, company: alone}, {bike: 4h}";
    assertThat(planned("groupShare", rides)).isEqualTo(Tally.certain(0.25));
    assertThat(planned("groupShare", "{bike: 1h, company: group}")).isEqualTo(Tally.certain(0));
  }

  @Test
  void kitOfTheRideIsInDoubtWhileTheLogNeverListsAny() {
    Tally doubtful = new Tally(0, "kit of the rides");
    assertThat(done("raceBikeRides", "{bike: 2h}")).isEqualTo(doubtful);
    assertThat(done("longestRaceClothingRideMinutes", "{bike: 2h}")).isEqualTo(doubtful);
  }

  @Test
  void theLongestRideInRaceClothingIsInIt() {
    String rides = "{bike: 2h, kit: [race-clothing]}, {bike: 3h, kit: [race-bike]}";
    assertThat(done("longestRaceClothingRideMinutes", rides)).isEqualTo(Tally.certain(120));
    assertThat(done("raceBikeRides", rides)).isEqualTo(Tally.certain(1));
  }

  @Test
  void theLongestRunIsByTimeOrByDistance() {
    String runs = "{run: 1h, distance: 8km}, {run: 50min, distance: 11km}";
    assertThat(done("longestRunMinutes", runs)).isEqualTo(Tally.certain(60));
    assertThat(done("longestRunKm", runs)).isEqualTo(Tally.certain(11));
    assertThat(done("longestRunKm", "{run: 1h}")).isEqualTo(new Tally(0, "distance of the runs"));
  }

  @Test
  void aRunIsAtRacePaceFromTenMinutesOn() {
    String runs = "{run: \"20min easy, 10min race\"}, {run: \"20min easy, 9min race\"}";
    assertThat(planned("racePaceRuns", runs)).isEqualTo(Tally.certain(1));
  }

  @Test
  void aRunIsFastHoweverShortTheFastPart() {
    String runs = "{run: \"20min easy, 4x20s max r1min, 5min easy\"}, {run: 30min easy}";
    assertThat(planned("fastRuns", runs)).isEqualTo(Tally.certain(1));
  }

  @Test
  void whetherALoggedRunWasFastIsInDoubt() {
    assertThat(done("fastRuns", "{run: 30min}"))
        .isEqualTo(new Tally(0, "set lines of the runs in the log"));
  }

  @Test
  void theSteepestRunIsThatWithMostDescentAKilometre() {
    String runs =
        "{run: 1h, distance: 10km, descent: 200m}, {run: 2h, distance: 20km, descent: 300m}";
    assertThat(done("steepestRunDescent", runs)).isEqualTo(Tally.certain(20));
    assertThat(done("steepestRunDescent", "{run: 1h, distance: 10km}"))
        .isEqualTo(new Tally(0, "descent of the runs in the log"));
  }

  @Test
  void theShareOfRunsOffTheBikeIsOfAllRuns() {
    String sessions = "{bike: 1h, then: {run: 20min easy}}, {run: 1h easy}, {run: 1h}, {run: 1h}";
    assertThat(planned("bricks", sessions)).isEqualTo(Tally.certain(1));
    assertThat(planned("offBikeShare", sessions)).isEqualTo(Tally.certain(0.25));
    assertThat(planned("offBikeShare", "{bike: 1h}")).isEqualTo(Tally.certain(0));
  }

  @Test
  void heatIsCountedByDay() {
    assertThat(done("heatDays", "{run: 1h, heat: yes}, {bike: 1h, heat: yes}"))
        .isEqualTo(Tally.certain(1));
    assertThat(done("heatDays", "{run: 1h}"))
        .isEqualTo(new Tally(0, "heat or air of the rides and runs in the log"));
  }

  @Test
  void rehearsalsAreCountedOfWhatIsSaid() {
    String sessions =
        "{run: 1h, distance: 12km, kit: [race-shoes]}, {run: 30min, distance: 5km},"
            + " {bike: 1h, practise: [transition]}";
    assertThat(done("raceShoeRuns", sessions)).isEqualTo(Tally.certain(1));
    assertThat(done("raceShoeKm", sessions)).isEqualTo(Tally.certain(12));
    assertThat(done("transitionSessions", sessions)).isEqualTo(Tally.certain(1));
  }

  @Test
  void longSessionsAndRunsAreFuelledApart() {
    String plan =
        Timelines.plan(
            "race-day: {fuel: {bike: {carbohydrate: 80g/h}, run: {carbohydrate: 40g/h}}}\n"
                + week(
                    "{bike: 4h, fuel: {carbohydrate: 80g/h, products: race}},"
                        + " {bike: 3h, fuel: {carbohydrate: 80g/h, products: race}},"
                        + " {run: 30min easy, fuel: {carbohydrate: 40g/h, products: race}}"));
    Tallies tallies =
        new Tallies(
            Timelines.span(Timelines.of(plan, null, "2027-05-30"), "2027-05-31", "2027-06-06"));
    assertThat(tallies.get("fuelledLongSessions")).isEqualTo(Tally.certain(2));
    assertThat(tallies.get("fuelledRuns")).isEqualTo(Tally.certain(1));
  }

  @Test
  void nothingIsCalledMissingInASpanOfWhichNoLogTells() {
    Timeline timeline = Timelines.of(Timelines.plan(week("{run: 1h easy}")), null, "2027-05-30");
    Tallies tallies = new Tallies(Timelines.span(timeline, "2027-05-24", "2027-06-06"));
    Tally unlogged = new Tally(0, "a log of all days since 24 May");
    assertThat(tallies.get("transitionSessions")).isEqualTo(unlogged);
    assertThat(tallies.get("dressRehearsals")).isEqualTo(unlogged);
    assertThat(tallies.get("heatDays")).isEqualTo(Tally.certain(0));
  }

  @Test
  void whatIsPlannedOfASpanCountsThoughNoLogTellsOfTheRest() {
    Timeline timeline =
        Timelines.of(Timelines.plan(week("{run: 1h easy, kit: [race-shoes]}")), null, "2027-05-30");
    Tallies tallies = new Tallies(Timelines.span(timeline, "2027-05-24", "2027-06-06"));
    assertThat(tallies.get("raceShoeRuns"))
        .isEqualTo(new Tally(1, "a log of all days since 24 May"));
  }

  @Test
  void aLittleOfALogIsEnoughToCountRehearsalsWithoutThatDoubt() {
    Timeline timeline =
        Timelines.of(
            Timelines.plan("weeks: []"), Timelines.log("2027-05-25: rest\n"), "2027-05-31");
    Span span = Timelines.span(timeline, "2027-05-01", "2027-05-30");
    assertThat(span.thin()).isTrue();
    assertThat(new Tallies(span).get("dressRehearsals")).isEqualTo(Tally.certain(0));
  }

  private static Tally planned(String name, String sessions) {
    Timeline timeline = Timelines.of(Timelines.plan(GOALS + week(sessions)), null, "2027-05-30");
    return Objects.requireNonNull(
        new Tallies(Timelines.span(timeline, "2027-05-31", "2027-06-06")).get(name));
  }

  private static String week(String sessions) {
    return "weeks: [{starts: 2027-05-31, days: {wed: [" + sessions + "]}}]\n";
  }

  private static Tally done(String name, String sessions) {
    return done("{name: Lena Brandl}", name, sessions);
  }

  private static Tally doneLately(String lately, String name, String sessions) {
    return done("{name: Lena Brandl, lately: {" + lately + "}}", name, sessions);
  }

  private static Tally done(String athlete, String name, String sessions) {
    String days =
        "2027-05-24: rest\n2027-05-26: {sessions: [" + sessions + "]}\n2027-05-30: rest\n";
    Timeline timeline =
        Timelines.of(
            Timelines.plan(athlete, "weeks: []"), Timelines.log("2027-05-24", days), "2027-05-31");
    return Objects.requireNonNull(
        new Tallies(Timelines.span(timeline, "2027-05-24", "2027-05-30")).get(name));
  }
}
