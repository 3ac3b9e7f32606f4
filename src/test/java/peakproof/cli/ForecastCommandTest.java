package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.Golden;

class ForecastCommandTest {
  private static final String TOVE = "plans/tove/plan.yaml";

  @Test
  void printsRangesWithTheirArithmetic() {
    Run run = Run.of("forecast", TOVE);
    assertThat(run.code()).isZero();
    Golden.assertMatches("report/forecast-tove-100.txt", run.out());
    Golden.assertMatches(
        "report/forecast-tove-60.txt", Run.of("forecast", TOVE, "--width", "60").out());
  }

  @Test
  void writesTheSameAsJson() {
    Golden.assertMatches(
        "report/forecast-tove.json", Run.of("forecast", TOVE, "--format", "json").out());
  }

  @Test
  void saysWhatItCannotDoWithoutPowerAndLog(@TempDir Path folder) throws IOException {
    Run run =
        Run.of("forecast", plan(folder, "tests: [{date: 2027-05-09, run: 10km, time: 50:00}]"));
    assertThat(run.out())
        .contains("bike                ?        ?        ?")
        .contains("total               ?        ?        ?")
        .containsPattern("not projected: it needs the athlete's critical-power under bike")
        .contains("logged long rides of the last weeks");
  }

  @Test
  void saysWhatItCannotDoWithoutTests(@TempDir Path folder) throws IOException {
    Run run = Run.of("forecast", plan(folder, "mass: 70kg", "bike: {critical-power: 240W}"));
    assertThat(run.out())
        .contains("swim                ?        ?        ?")
        .contains("run                 ?        ?        ?")
        .contains("by the power equation: critical power 240 W")
        .contains("a run race or test of the last weeks")
        .contains("aero bars are not written under `bike`")
        .contains("climb not given, taken as flat");
  }

  @Test
  void needsNoHeartRate(@TempDir Path folder) throws IOException {
    Run run =
        Run.of(
            "forecast",
            plan(
                folder,
                "health: {conditions: [beta-blocker]}",
                "tests: [{date: 2027-05-09, run: 10km, time: 50:00}]"));
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("run           1:");
  }

  @Test
  void wantsOnePlan() {
    assertThat(Run.of("forecast", "plans").code()).isEqualTo(2);
    assertThat(Run.of("forecast", "plans").err()).contains("name one of them");
    assertThat(Run.of("forecast", "nowhere").err()).contains("no plan at 'nowhere'");
  }

  private static String plan(Path folder, String... athlete) throws IOException {
    String lines =
        """
        plan:
          format: 1
          athlete:
            name: Lena Brandl
            %s
          event:
            name: Weiherburg Half
            date: 2027-06-20
            legs: {swim: 1.9km, bike: 90km, run: half-marathon}
          weeks: [{starts: 2027-05-31, days: {tue: [{run: 40min easy}]}}]
        """
            .formatted(String.join("\n    ", athlete));
    Path file = folder.resolve("plan.yaml");
    Files.writeString(file, lines);
    return file.toString();
  }
}
