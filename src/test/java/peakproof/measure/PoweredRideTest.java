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
            2027-05-22: {sessions: [{bike: 4h, distance: 120km, power: 168W}]}
            2027-05-29: {sessions: [{bike: 1h, distance: 35km, power: 210W}]}
        """;
    Projected held = bike("240W", "", log, PLANNING);
    Projected.Range band = bike("240W", "", "", PLANNING).range();
    assertThat(held.range().likely()).isGreaterThan(band.likely());
    assertThat(held.entries()).anyMatch(entry -> entry.startsWith("/log/days/2027-05-22"));
    assertThat(held.entries()).noneMatch(entry -> entry.startsWith("/log/days/2027-05-29"));
    assertThat(held.arithmetic()).anyMatch(line -> line.contains("163 to 173 W"));
    assertThat(held.narrowing()).isNull();
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
