package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.rule.RuleFiles;

/** Rules a club starts from nothing, and shipped ones it takes a copy of. */
class RulesWrittenTest {
  @TempDir private Path home;
  private Path own;

  @BeforeEach
  void ship() {
    Map<String, String> texts = RuleFiles.sound();
    texts.merge(".yaml", "was: []", (text, old) -> text.replace(old, "was: [boat-full]"));
    RuleFiles.in(home.resolve("rules")).with(texts);
    own = home.resolve("our-rules");
  }

  @Test
  void startsARuleThatPassesItsChecksAndCases() {
    for (String theme : List.of("swim", "health", "race-rules", "our-own")) {
      Run made = start("lake-" + theme, theme);
      assertThat(made.code()).as(made.err()).isZero();
      assertThat(own.resolve(theme + "/lake-" + theme + ".drl")).isRegularFile();
    }
    Run check = run("rules", "check", own.toString());
    assertThat(check.err()).isEmpty();
    assertThat(check.code()).isZero();
    Run tried = run("rules", "try", own.toString());
    assertThat(tried.out()).isEqualTo("24 cases of 4 rules tried, 0 failed\n");
    assertThat(tried.code()).isZero();
  }

  @Test
  void startsARuleThatPassesBesideAllShippedOnes() {
    Path folder = home.resolve("beside");
    assertThat(Run.of("rules", "new", "lake-swims", "--theme", "swim", "--dir", folder + "").code())
        .isZero();
    Run tried = Run.of("rules", "try", folder.toString());
    assertThat(tried.err()).isEmpty();
    assertThat(tried.out()).isEqualTo("6 cases of 1 rule tried, 0 failed\n");
    assertThat(tried.code()).isZero();
  }

  @Test
  void saysWhatToDoNext() {
    assertThat(start("lake-swims", "swim").out())
        .contains(own + "/swim/lake-swims.yaml", "start here")
        .contains("peakproof rules check " + own, "peakproof rules try " + own)
        .contains("peakproof audit PLANS --rules " + own);
  }

  @Test
  void cautionsWhereACautionIsCompulsory() throws IOException {
    start("lake-a", "health");
    start("lake-b", "swim");
    assertThat(text("health/lake-a.yaml")).contains("care: A sign that worries");
    assertThat(text("swim/lake-b.yaml")).contains("care: none");
  }

  @Test
  void overwritesNothing() throws IOException {
    start("lake-swims", "swim");
    String card = text("swim/lake-swims.yaml");
    Files.writeString(own.resolve("swim/lake-swims.yaml"), card + "# mine\n");
    for (String theme : List.of("swim", "bike")) {
      Run again = start("lake-swims", theme);
      assertThat(again.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
      assertThat(again.err()).contains("there is a rule 'lake-swims' already", "another name");
    }
    assertThat(text("swim/lake-swims.yaml")).endsWith("# mine\n");
    assertThat(own.resolve("bike")).doesNotExist();
  }

  @Test
  void takesNoNameThatIsTaken() {
    assertThat(start("boat-swims", "swim").err()).contains("there is a rule 'boat-swims' already");
    assertThat(start("boat-full", "swim").err())
        .contains("'boat-full' is a former name of 'boat-swims'; take another name");
    assertThat(own).doesNotExist();
  }

  @Test
  void takesNoNameThatIsNone() {
    for (String name : List.of("Lake Swims", "lake/swims", "../lake", "measures", "base", "1st")) {
      Run rule = start(name, "swim");
      assertThat(rule.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
      assertThat(rule.err()).contains("'" + name + "' is no name for a rule; write", "lake-swims");
      assertThat(start("lake-swims", name).err()).contains("is no name for a theme");
    }
    assertThat(own).doesNotExist();
  }

  @Test
  void asksForATheme() {
    Run run = run("rules", "new", "lake-swims");
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
    assertThat(run.err()).contains("--theme");
  }

  @Test
  void remarksOnAThemeThatMayBeMistyped() {
    assertThat(start("lake-swims", "swin").err())
        .contains("'swin' is a new theme; if you meant 'swim', rename the folder");
    assertThat(start("lake-runs", "golf").err()).contains("new theme; the others are swim");
    assertThat(start("lake-laps", "swim").err()).isEmpty();
  }

  @Test
  void leavesNothingHalfDone() throws IOException {
    Files.writeString(home.resolve("file"), "");
    Run run =
        run("rules", "new", "lake-swims", "--theme", "swim", "--dir", home.resolve("file") + "/x");
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
    assertThat(run.err()).contains("cannot write in", "nothing was written", "--dir");
    Files.createDirectories(own.resolve("swim/lake-swims.cases.yaml"));
    assertThat(start("lake-swims", "swim").code()).isEqualTo(ExitCode.WRONG_USAGE.number());
    assertThat(own.resolve("swim/lake-swims.drl")).doesNotExist();
    start("lake-laps", "swim");
    try (Stream<Path> files = Files.list(own)) {
      assertThat(files.map(Path::getFileName).map(Path::toString)).containsExactly("swim");
    }
  }

  @Test
  void exportsEveryRuleWithCardAndCases() throws IOException {
    Path study = home.resolve("study");
    Run run = run("rules", "export", "--output", study.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("Wrote 1 rule into " + study + ", three files each");
    for (String ending : List.of(".drl", ".yaml", ".cases.yaml")) {
      assertThat(study.resolve("swim/boat-swims" + ending))
          .hasSameTextualContentAs(home.resolve("rules/swim/boat-swims" + ending));
    }
  }

  @Test
  void exportsOverNothingUnlessTold() throws IOException {
    Path study = home.resolve("study");
    Path card = study.resolve("swim/boat-swims.yaml");
    run("rules", "export", "--output", study.toString());
    Files.writeString(card, "mine", StandardCharsets.UTF_8);
    Run again = run("rules", "export", "boat-full", "--output", study.toString());
    assertThat(again.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
    assertThat(again.err()).contains("there are 3 of these files already", "--overwrite");
    assertThat(card).hasContent("mine");
    Run told = run("rules", "export", "--output", study.toString(), "--overwrite");
    assertThat(told.code()).isZero();
    assertThat(card).hasSameTextualContentAs(home.resolve("rules/swim/boat-swims.yaml"));
  }

  @Test
  void exportTellsItsUserErrors() throws IOException {
    assertThat(run("rules", "export").err()).contains("--output");
    assertThat(run("rules", "export", "boat-swim", "--output", home + "/study").err())
        .contains("did you mean 'boat-swims'?");
    Path file = Files.writeString(home.resolve("file"), "");
    Run run = run("rules", "export", "--output", file.toString());
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
    assertThat(run.err()).contains("is a file; name a folder to write into");
  }

  private String text(String file) throws IOException {
    return Files.readString(own.resolve(file), StandardCharsets.UTF_8);
  }

  private Run start(String name, String theme) {
    return run("rules", "new", name, "--theme", theme, "--dir", own.toString());
  }

  private Run run(String... arguments) {
    return Run.in(new Surroundings(home, Run.CLOCK, false, false, Map.of()), arguments);
  }
}
