package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import peakproof.document.Dossier;
import peakproof.document.Texts;

/**
 * The power equation is Martin 1998, doi 10.1123/jab.14.3.276; what a rider is taken for is common
 * practice, no source.
 */
class PoweredRideTest {
  private static final LocalDate AS_OF = LocalDate.parse("2027-05-30");

  /** 85 kg in all, 0.30 m², 0.004, 1.2 kg/m³ on a flat course without wind. */
  private static final Map<Constant, Double> PLANNING =
      Map.of(
          Constant.RIDE_AERO_FAST, 0.30,
          Constant.RIDE_AERO_SLOW, 0.30,
          Constant.RIDE_ROLLING_SLOW, 0.004,
          Constant.RIDE_AIR, 101_325 / (287.058 * 1.2) - 273.15,
          Constant.RIDE_SHARE_FULL_FROM, 0.75,
          Constant.RIDE_SHARE_FULL_TO, 0.75);

  @Test
  void oneHundredAndEightyWattsTakeFiveTwentyThree() {
    Projected.Range bike = bike("240W", "", "", PLANNING).range();
    assertThat(bike.likely()).isCloseTo(5 * 3600 + 23 * 60 + 39, within(1.0));
    assertThat(bike.width()).isCloseTo(0, within(1e-6));
  }

  @Test
  void theFastEndIsTheUpperEndOfTheBandAndTheLowerDrag() {
    Projected.Range bike = bike("240W", "", "", Map.of()).range();
    double fast = seconds(240 * 0.78, 0.28, 0.004);
    double likely = seconds(240 * 0.715, 0.30, 0.0045);
    double slow = seconds(240 * 0.65, 0.32, 0.005);
    assertThat(bike.low()).isCloseTo(fast, within(1e-3));
    assertThat(bike.likely()).isCloseTo(likely, within(1e-3));
    assertThat(bike.high()).isCloseTo(slow, within(1e-3));
  }

  @Test
  void climbWindColdAirAndMassMakeItSlower() {
    double flat = bike("240W", "", "", PLANNING).range().likely();
    assertThat(bike("240W", "bike: {climb: 1250m}", "", PLANNING).range().likely())
        .isGreaterThan(flat + 60);
    assertThat(bike("240W", "weather: {wind: 5m/s, air: 21C}", "", PLANNING).range().likely())
        .isGreaterThan(flat + 60);
    assertThat(bike("240W", "weather: {air: 5C}", "", PLANNING).range().likely())
        .isGreaterThan(flat + 60);
    assertThat(bike("260W", "", "", PLANNING).range().likely()).isLessThan(flat - 60);
  }

  @Test
  void whatLongRidesWereHeldAtComesBeforeTheBand() {
    String log =
        """
        log:
          format: 1
          days:
            2027-05-15: {sessions: [{bike: 4h race, time: 4h, distance: 128km}]}
            2027-05-22: {sessions: [{bike: 4h, distance: 120km, power: 168W}]}
            2027-05-29: {sessions: [{bike: 1h, distance: 35km, power: 210W}]}
        """;
    Projected held = bike("240W", "", log, PLANNING);
    Projected.Range band = bike("240W", "", "", PLANNING).range();
    assertThat(held.range().likely()).isGreaterThan(band.likely());
    assertThat(held.entries()).anyMatch(entry -> entry.startsWith("/log/days/2027-05-22"));
    assertThat(held.entries()).noneMatch(entry -> entry.startsWith("/log/days/2027-05-29"));
    assertThat(held.entries()).noneMatch(entry -> entry.startsWith("/log/days/2027-05-15"));
    // 168 W are 70 % of 240 W, 3 % either way
    assertThat(held.arithmetic().get(0))
        .isEqualTo(
            "by the power equation: critical power 240 W, 68 % to 72 % of it held on the logged"
                + " long ride at race effort, which is 163 to 173 W");
    // 128 and 120 km in 4 h: 31 km/h, over 180 km 5:48:23
    assertThat(held.arithmetic().get(3))
        .isEqualTo(
            "for comparison, median speed 31 km/h of 2 logged long rides at race effort: 5:48:23");
    assertThat(held.narrowing()).isNull();
  }

  @Test
  void withoutAeroBarsTheRiderIsTakenForAnUprightOne() {
    Projected bike =
        project(dossier("", "mass: 74kg", "bike: {critical-power: 240W}", ""), Map.of());
    assertThat(bike.range().low()).isCloseTo(seconds(240 * 0.78, 0.36, 0.004), within(1e-3));
    assertThat(bike.range().high()).isCloseTo(seconds(240 * 0.65, 0.42, 0.005), within(1e-3));
    // 240 W times 0.65 and 0.78
    assertThat(bike.arithmetic())
        .containsExactly(
            "by the power equation: critical power 240 W, 65 % to 78 % of it as the distance is"
                + " usually ridden, which is 156 to 187 W",
            "rider 74 kg and bike 11 kg, drag area 0.36 to 0.42 m² (aero bars are not written"
                + " under `bike`), rolling 0.004 to 0.005",
            "climb not given, taken as flat, no wind given, air 20 °C assumed");
  }

  @Test
  void saysWhichCourseAndWeatherItTook() {
    String course = "bike: {climb: 1250m}\n    weather: {wind: 5m/s, air: 21C}";
    // 60 % of the wind blow at a rider's height
    assertThat(bike("240W", course, "", Map.of()).arithmetic())
        .anyMatch(line -> line.contains("drag area 0.28 to 0.32 m² (on aero bars)"))
        .contains(
            "climb 1250 m, of whose work 60 % comes back on the descents, wind 3 m/s at a rider's"
                + " height, the mean of head- and tailwind, air 21 °C");
  }

  @Test
  void isUnknownInAirThatIsNowhere() {
    assertThat(bike("240W", "", "", Map.of(Constant.RIDE_AIR, 99.0)).because())
        .contains("power, mass and climb that fit together");
  }

  @Test
  void testsOnFootOldOnesAndThoseToComeGiveNoCriticalPower() {
    String tests =
        """
        tests:
              - {date: 2027-05-01, bike: 3min, power: 330W}
              - {date: 2027-05-02, bike: 12min, power: 270W}
              - {date: 2027-05-02, run: 6min, power: 260W}
              - {date: 2027-01-01, bike: 6min, power: 250W}
        """
            .strip();
    Dossier dossier = dossier("", "mass: 74kg", tests, "");
    Constants constants = ShippedConstants.constants();
    Reading critical = Calibration.of(dossier.plan(), null, AS_OF, constants).criticalPower();
    assertThat(critical.value()).isCloseTo(250, within(1e-6));
    assertThat(critical.entries()).hasSize(2);
    LocalDate before = LocalDate.parse("2027-05-01");
    assertThat(Calibration.of(dossier.plan(), null, before, constants).criticalPower().known())
        .isFalse();
  }

  @Test
  void saysHowMuchARideWithPowerWouldNarrowIt() {
    Projected bike = bike("240W", "", "", Map.of());
    assertThat(bike.narrowing().entry()).contains("logged with `power`");
    assertThat(bike.narrowing().seconds()).isBetween(60.0, bike.range().width());
  }

  @Test
  void twoPowerTestsGiveTheCriticalPowerThatIsNotStated() {
    // 330 W for 3 min and 270 W for 12 min: 250 W
    String tests =
        "tests: [{date: 2027-05-01, bike: 3min, power: 330W}, {date: 2027-05-02, bike: 12min, power: 270W}]";
    Dossier dossier = dossier("", "mass: 74kg", tests, "");
    Reading critical =
        Calibration.of(dossier.plan(), null, AS_OF, ShippedConstants.constants()).criticalPower();
    assertThat(critical.value()).isCloseTo(250, within(1e-6));
    assertThat(critical.tested()).isTrue();
    assertThat(critical.entries()).hasSize(2);
  }

  @Test
  void withoutPowerOrMassItSaysWhichIsMissing() {
    assertThat(project(dossier("", "mass: 74kg", "", ""), Map.of()).because())
        .contains("critical-power");
    assertThat(project(dossier("", "bike: {critical-power: 240W}", "", ""), Map.of()).because())
        .contains("`mass`");
  }

  private static double seconds(double watts, double drag, double rolling) {
    Constants constants = ShippedConstants.constants();
    double density = AirDensity.of(20, 101_325).value();
    return 180_000 / Cycling.of(85, drag, rolling, density, constants).speed(watts, 0, 0).value();
  }

  private static Projected bike(
      String power, String course, String log, Map<Constant, Double> changed) {
    return project(
        dossier(course, "mass: 74kg", "bike: {critical-power: " + power + ", position: aero}", log),
        changed);
  }

  private static Projected project(Dossier dossier, Map<Constant, Double> changed) {
    Constants constants = ShippedConstants.with(new HashMap<>(changed));
    Calibration athlete = Calibration.of(dossier.plan(), dossier.log(), AS_OF, constants);
    return RaceProjection.of(dossier.plan(), dossier.log(), AS_OF, athlete, constants).bike();
  }

  private static Dossier dossier(String course, String first, String second, String log) {
    return Texts.dossier(
        """
        plan:
          format: 1
          athlete:
            name: Lena Brandl
            %s
            %s
          event:
            name: Saltmarsh Long Course
            date: 2027-07-04
            legs: {swim: 3.8km, bike: 180km, run: 42.2km}
            %s
          goal: {bike-effort: 168W}
          weeks: [{starts: 2027-05-31, days: {tue: [{run: 40min easy}]}}]
        """
            .formatted(first, second, course),
        null,
        log.isEmpty() ? null : log,
        null);
  }
}
