package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files started by questions and by options. */
class NewCommandTest {
  @TempDir private Path folder;

  @Test
  void namesEverythingThatIsMissingWhereNobodyAnswers() {
    Run run = Run.of("new", "plan", folder.resolve("plan.yaml").toString(), "--name", "Tove");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .contains("missing: --event (such as")
        .contains("--profile", "--weekly-hours", "--longest-ride", "--longest-run")
        .doesNotContain("--name");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void asksOnlyWhereSomebodyCanAnswer() {
    String file = folder.resolve("house.yaml").toString();
    Path home = Path.of("").toAbsolutePath();
    for (boolean terminal : new boolean[] {true, false}) {
      Surroundings half = new Surroundings(home, Run.CLOCK, terminal, true, !terminal, Map.of());
      assertThat(Run.fed("Tidemill Tri\n\n", half, "new", "house", file).code()).isEqualTo(2);
    }
    assertThat(answered("Tidemill Tri\n\n", "new", "house", file).code()).isZero();
  }

  @Test
  void asksAgainInTheReadersWords() throws IOException {
    Path file = folder.resolve("events/saltmarsh.yaml");
    Run run =
        answered(
            "\nSaltmarsh: the Long Course\n4.7.2027\n2027-07-04\nlong\nfull\nlake\n\n\n17.5C\n\n6\n"
                + "06:30\n12m\n2:20:00/10:30:00\n2:20:00/10:30:00/17:00:00\n",
            "new",
            "event",
            file.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("This one is needed, such as Saltmarsh Long Course")
        .contains("'4.7.2027' is no date")
        .contains("'long' is")
        .contains("'6' is")
        .contains("On what day is it? (such as 2027-07-04)")
        .contains("Where is the swim? (Enter for lake)")
        .contains("Wrote " + file);
    assertThat(Files.readString(file))
        .contains("  name: \"Saltmarsh: the Long Course\"\n", "  start: 06:30\n")
        .contains("  legs: {swim: 3.8km, bike: 180km, run: 42.2km}\n")
        .contains("cut-offs: {swim: 2:20:00, bike: 10:30:00, finish: 17:00:00}");
  }

  @Test
  void writesNothingWhenTheAnswersEnd() {
    Run run = answered("Saltmarsh\n", "new", "event", folder.resolve("event.yaml").toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("the answers ended before the questions; nothing was written");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void tellsEveryWrongOption() {
    Run run =
        Run.of("new", "event", "event.yaml", "--name", " ", "--date", "soon", "--water", "pond");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("--name: this is empty", "--date: 'soon'", "--water: 'pond'");
  }

  @Test
  void writesNothingOver() throws IOException {
    Path file = Files.writeString(folder.resolve("house.yaml"), "mine\n");
    Run run = Run.of("new", "house", file.toString(), "--name", "Tidemill Tri");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("already, and nothing is written over");
    assertThat(Files.readString(file)).isEqualTo("mine\n");
  }

  @Test
  void takesAnyNameAsItIs() throws IOException {
    Path file = folder.resolve("house.yaml");
    String name = "\"Tri\": {no} # 1 \\ & PRESET";
    assertThat(Run.of("new", "house", file.toString(), "--name", name).code()).isZero();
    assertThat(Files.readString(file)).contains("name: \"\\\"Tri\\\": {no} # 1 \\\\ & PRESET\"\n");
  }

  @Test
  void startsAPlanThatIsReadWhereItStands() throws IOException {
    Path event = folder.resolve("events/reedmere.yaml");
    Path plan = folder.resolve("tove/plan.yaml");
    String[] race = {"--name", "Reedmere", "--date", "2027-06-26", "--distance", "standard"};
    assertThat(run("event", event, race).code()).isZero();
    Run made =
        run(
            "plan",
            plan,
            "--name",
            "Tove Lindqvist",
            "--event",
            event.toString(),
            "--profile",
            "masters",
            "--weekly-hours",
            "6h",
            "--longest-ride",
            "1h45",
            "--longest-run",
            "55min",
            "--days-off",
            "mon,fri");
    assertThat(made.err()).isEmpty();
    assertThat(made.code()).isZero();
    assertThat(made.out()).contains("Wrote " + plan, "audited as of 2027-05-02: 0 hold 0 fix");
    String text = Files.readString(plan);
    assertThat(text)
        .startsWith("# A skeleton")
        .contains(
            "event: ../events/reedmere.yaml\n", "# mass: 62kg", "mon: rest", "race: Reedmere");
    Run audit = Run.of("audit", plan.toString());
    assertThat(audit.err()).isEmpty();
    assertThat(audit.code()).isZero();
    try (Stream<Path> files = Files.list(plan.getParent())) {
      assertThat(files).containsExactly(plan);
    }
  }

  @Test
  void refusesWeeksThatCannotBe() {
    Path event = folder.resolve("event.yaml");
    run("event", event, "--name", "A", "--date", "2027-06-26", "--distance", "half");
    for (String[] wrong :
        new String[][] {
          {"--starts", "2027-06-21"}, {"--starts", "2026-01-05"}, {"--days-off", "mon,tue,wed"}
        }) {
      Run made =
          run(
              "plan",
              folder.resolve("plan.yaml"),
              "--name",
              "B",
              "--event",
              event.toString(),
              "--profile",
              "masters",
              "--weekly-hours",
              "8h",
              "--longest-ride",
              "3h",
              "--longest-run",
              "1h20",
              wrong[0],
              wrong[1]);
      assertThat(made.code()).isEqualTo(2);
      assertThat(made.err()).contains("'" + wrong[0] + "'");
    }
    assertThat(folder.resolve("plan.yaml")).doesNotExist();
  }

  @Test
  void showsExamplesInTheHelp() {
    for (String kind : new String[] {"plan", "event", "house"}) {
      assertThat(Run.of("new", kind, "--help").out())
          .contains("Examples: by questions; by options", "peakproof new " + kind, "--name");
    }
  }

  private static Run run(String kind, Path file, String... options) {
    return Run.of(
        Stream.concat(Stream.of("new", kind, file.toString()), Stream.of(options))
            .toArray(String[]::new));
  }

  private static Run answered(String input, String... arguments) {
    Path home = Path.of("").toAbsolutePath();
    return Run.fed(input, new Surroundings(home, Run.CLOCK, true, true, true, Map.of()), arguments);
  }
}
