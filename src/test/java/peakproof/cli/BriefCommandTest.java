package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BriefCommandTest {
  private static final String TOVE = "plans/tove/plan.yaml";
  private static final String MATEUS = "plans/mateus/plan.yaml";

  @Test
  void writesAPageUnlessAskedForSomethingElse() {
    Run page = Run.of("brief", TOVE);
    assertThat(page.code()).isZero();
    assertThat(page.err()).isEmpty();
    assertThat(page.out()).startsWith("<!doctype html>").contains("@page { size: a4;");
    assertThat(Run.of("brief", "plans/tove", "--paper", "letter").out())
        .contains("@page { size: letter;");
    assertThat(Run.of("brief", TOVE, "--format", "markdown").out()).startsWith("# Tove Lindqvist");
    assertThat(Run.of("brief", TOVE, "--format", "ics").out()).startsWith("BEGIN:VCALENDAR\r\n");
  }

  @Test
  void writesNothingWhileAHoldStands(@TempDir Path folder) {
    Path file = folder.resolve("brief.html");
    Run run = Run.of("brief", MATEUS, "--output", file.toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(file).doesNotExist();
    assertThat(run.err())
        .contains(
            "plans/mateus/plan.yaml:37: HOLD run-pain-rule: Running planned on pain that should be"
                + " looked at")
        .contains("'accepted'", "--despite-hold REASON");
  }

  @Test
  void writesItDespiteAHoldForAReasonItKeepsToItself() {
    Run run =
        Run.of("brief", MATEUS, "--format", "markdown", "--despite-hold", "physio said QUIET");
    assertThat(run.code()).isZero();
    assertThat(run.err()).contains("run-pain-rule", "because: physio said QUIET");
    assertThat(run.out())
        .startsWith("# Mateus")
        .doesNotContain("QUIET", "HOLD", "run-pain-rule", "chilles");
  }

  @Test
  void wantsAReason() {
    Run run = Run.of("brief", MATEUS, "--despite-hold", " ");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("expected a reason in words");
  }

  @Test
  void letsAnAcceptedHoldPass(@TempDir Path folder) throws IOException {
    Path plan = copy(folder, "gwen");
    assertThat(Run.of("brief", plan.toString()).code()).isEqualTo(1);
    Files.writeString(
        plan,
        Files.readString(plan)
            + """
              accepted:
                - rule: swim-alone-open-water
                  because: her sister rows beside her
                  by: MK
                  until: 2027-06-30
            """);
    Run run = Run.of("brief", plan.toString(), "--format", "markdown");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out()).doesNotContain("sister");
  }

  @Test
  void tellsFaultsAndWrongUsageLikeTheOtherCommands(@TempDir Path folder) throws IOException {
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(plan, "plan: {format: 1}\n");
    assertThat(Run.of("brief", plan.toString()).code()).isEqualTo(3);
    assertThat(Run.of("brief", "plans").code()).isEqualTo(2);
    Run zone = Run.of("brief", TOVE, "--time-zone", "Atlantis");
    assertThat(zone.code()).isEqualTo(2);
    assertThat(zone.err()).contains("expected a name such as Europe/Oslo");
  }

  @Test
  void namesTheZoneOfTheRace() {
    assertThat(Run.of("brief", TOVE, "--format", "markdown", "--time-zone", "Europe/Oslo").out())
        .contains("start 06:30, local time at the race (Europe/Oslo)");
  }

  private static Path copy(Path folder, String name) throws IOException {
    Path events = Files.createDirectories(folder.resolve("events"));
    Path own = Files.createDirectories(folder.resolve(name));
    Files.copy(Path.of("plans/events/saltmarsh.yaml"), events.resolve("saltmarsh.yaml"));
    Files.copy(Path.of("plans", name, "log.yaml"), own.resolve("log.yaml"));
    return Files.copy(Path.of("plans", name, "plan.yaml"), own.resolve("plan.yaml"));
  }
}
