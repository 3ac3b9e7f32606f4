package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.document.Dossier;
import peakproof.document.Texts;
import peakproof.measure.Forecast.Leg;
import peakproof.measure.Projected.Range;

/** What stands beside a projection; the swim's allowances are common practice, no source. */
class ForecastTest {
  private static final Projected HALF_AN_HOUR =
      Projected.of(new Range(1700, 1800, 1900), List.of(), List.of());

  @Test
  void aGoalIsAheadOfTheFastEndAndBehindTheSlowEndButNotAtThem() {
    assertThat(new Leg("swim", HALF_AN_HOUR, 1699.0).verdict()).isEqualTo(Leg.Verdict.AHEAD);
    assertThat(new Leg("swim", HALF_AN_HOUR, 1700.0).verdict()).isEqualTo(Leg.Verdict.WITHIN);
    assertThat(new Leg("swim", HALF_AN_HOUR, 1900.0).verdict()).isEqualTo(Leg.Verdict.WITHIN);
    assertThat(new Leg("swim", HALF_AN_HOUR, 1901.0).verdict()).isEqualTo(Leg.Verdict.BEHIND);
    assertThat(new Leg("swim", HALF_AN_HOUR, null).verdict()).isNull();
    assertThat(new Leg("swim", Projected.unknown("tests"), 1700.0).verdict()).isNull();
  }

  @Test
  void theEntryThatNarrowsMostIsNamed() {
    Leg some = new Leg("bike", HALF_AN_HOUR.narrowedBy("a ride", 40), null);
    Leg more = new Leg("swim", HALF_AN_HOUR.narrowedBy("a swim", 60), null);
    Leg none = new Leg("run", HALF_AN_HOUR, null);
    assertThat(new Forecast(List.of(some, more, none), List.of()).narrowsMost().entry())
        .isEqualTo("a swim");
    assertThat(new Forecast(List.of(none), List.of()).narrowsMost()).isNull();
  }

  @Test
  void goalsAndLimitsOfThePlanStandBesideTheirLegs() {
    Forecast forecast =
        forecast(
            "goal: {swim: 1:10:00, transitions: 10min, bike: 6h, run: 4h, total: 11:20:00}",
            "cut-offs: {swim: 2:20:00, finish: 17h}");
    assertThat(forecast.legs().stream().map(Leg::name))
        .containsExactly("swim", "transitions", "bike", "run", "total");
    assertThat(forecast.legs().stream().map(Leg::goal))
        .containsExactly(4200.0, 600.0, 21_600.0, 14_400.0, 40_800.0);
    assertThat(forecast.cutOffs().stream().map(Forecast.CutOff::name))
        .containsExactly("swim", "finish");
    assertThat(forecast.cutOffs().stream().map(Forecast.CutOff::limit))
        .containsExactly(8400.0, 61_200.0);
    assertThat(forecast.cutOffs().get(0).reached().range()).isNotNull();
  }

  @Test
  void withoutGoalOrLimitsNothingStandsBeside() {
    Forecast forecast = forecast("", "");
    assertThat(forecast.legs()).allMatch(leg -> leg.goal() == null);
    assertThat(forecast.cutOffs()).isEmpty();
  }

  /** 200 m in 3:05 and 400 m in 6:28 are 101.5 s/100 m; a race swim takes 2, 4 and 6 s more. */
  @Test
  void aWetsuitThatIsAllowedAndWornTakesUpToSixSecondsOff() {
    Range suited = swim("allowed", "yes");
    assertThat(suited.low()).isCloseTo(38 * 97.5 * 1.02, within(1e-6));
    assertThat(suited.likely()).isCloseTo(38 * 102.5 * 1.03, within(1e-6));
    assertThat(suited.high()).isCloseTo(38 * 107.5 * 1.05, within(1e-6));
    assertThat(swim("required", "yes")).isEqualTo(suited);
    Range without = swim("forbidden", "yes");
    assertThat(without.low()).isCloseTo(38 * 103.5 * 1.02, within(1e-6));
    assertThat(swim("allowed", "no")).isEqualTo(without);
  }

  @Test
  void aSwimInAWetsuitSaysSo() {
    assertThat(
            race("", "swim: {wetsuit: allowed}", "race-day: {wetsuit: {worn: yes}}")
                .swim()
                .arithmetic())
        .contains("0 to 6 s/100 m faster in the wetsuit that is allowed and worn");
  }

  private static Range swim(String rule, String worn) {
    return race("", "swim: {wetsuit: " + rule + "}", "race-day: {wetsuit: {worn: " + worn + "}}")
        .swim()
        .range();
  }

  private static Forecast forecast(String goal, String limits) {
    return Forecast.of(dossier(goal, limits, "").plan(), race(goal, limits, ""));
  }

  private static RaceProjection race(String goal, String event, String raceDay) {
    Dossier dossier = dossier(goal, event, raceDay);
    LocalDate asOf = LocalDate.parse("2027-05-30");
    Constants constants = ShippedConstants.constants();
    Calibration athlete = Calibration.of(dossier.plan(), null, asOf, constants);
    return RaceProjection.of(dossier.plan(), null, asOf, athlete, constants);
  }

  private static Dossier dossier(String goal, String event, String raceDay) {
    return Texts.dossier(
        """
        plan:
          format: 1
          athlete:
            name: Lena Brandl
            tests:
              - {date: 2027-05-08, swim: 200m, time: "3:05"}
              - {date: 2027-05-08, swim: 400m, time: "6:28"}
          event:
            name: Saltmarsh Long Course
            date: 2027-07-04
            legs: {swim: 3.8km, bike: 180km, run: 42.2km}
            %s
          %s
          %s
          weeks: [{starts: 2027-05-31, days: {tue: [{run: 40min easy}]}}]
        """
            .formatted(event, goal, raceDay),
        null,
        null,
        null);
  }
}
