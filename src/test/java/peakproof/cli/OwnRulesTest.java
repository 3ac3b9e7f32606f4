package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import peakproof.rule.RuleFiles;

/** Rules that only the plans of one house are judged by. */
class OwnRulesTest {
  private static final String TITLE = "More swims than the boat can follow";

  @TempDir private Path home;
  private RuleFiles shipped;
  private Path club;
  private Path plan;

  @BeforeEach
  void found() throws IOException {
    shipped = RuleFiles.in(home.resolve("rules")).named("lake-swims", RuleFiles.sound());
    club = Files.createDirectories(home.resolve("club"));
    plan = copyTo(club);
  }

  @Test
  void judgeThePlansOfTheirHouseOnly() throws IOException {
    own("our-rules", "value: 4", "value: 1");
    Path elsewhere = copyTo(Files.createDirectories(home.resolve("elsewhere")));
    house("own-rules: [our-rules]");
    Run both = run("audit", plan.toString(), elsewhere.toString());
    assertThat(both.err()).isEmpty();
    assertThat(both.out()).containsOnlyOnce(TITLE).contains("2 rules: ").contains("1 rule: ");
    assertThat(run("audit", elsewhere.toString()).out()).doesNotContain(TITLE);
  }

  @Test
  void takeTheHousesNumbersAndWords() throws IOException {
    own("our-rules", "value: 4", "value: 1");
    house("own-rules: [our-rules]", "settings: {boat-swims: {most: 7}}");
    assertThat(run("audit", plan.toString()).out()).doesNotContain(TITLE);
    house("own-rules: [our-rules]", "words: {boat-swims: {do: Ask Ilja for the second boat.}}");
    assertThat(run("audit", plan.toString()).out()).contains("Ask Ilja for the second boat.");
    house("settings: {boat-swims: {most: 7}}");
    assertThat(run("audit", plan.toString()).err()).contains("there is no rule 'boat-swims'");
  }

  @Test
  void makeTheAuditIncompleteWhenOneIsBroken() throws IOException {
    own("our-rules", "why: \"Swims in {week.label}", "why: \"Swims in {week.lable}");
    house("own-rules: [our-rules]");
    Run run = run("audit", plan.toString());
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_RULE.number());
    assertThat(run.out()).contains("Incomplete: a broken rule could not run");
    assertThat(run.err()).hasLineCount(1).contains("boat-swims.yaml", "'{week.lable}' is no field");
  }

  @Test
  void maySpeakOfMeasuresAndForecasts() throws IOException {
    own("our-rules", "value: 4", "value: 1");
    house("own-rules: [our-rules]", "settings: {boat-swims: {most: 7}}");
    assertThat(run("measures", plan.toString()).code()).isZero();
    assertThat(run("forecast", plan.toString()).code()).isZero();
  }

  @Test
  void countOnceWhenTheRunNamesTheirFolderToo() throws IOException {
    Path folder = own("our-rules", "value: 4", "value: 1");
    house("own-rules: [our-rules]");
    Run run = run("audit", plan.toString(), "--rules", folder.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).containsOnlyOnce(TITLE);
  }

  @Test
  void judgeByWhateverWayTheyAreAskedFor() throws IOException {
    Path folder = own("our-rules", "value: 4", "value: 1");
    Path arguments = Files.writeString(club.resolve("arguments"), "--rules=" + folder);
    assertThat(run("audit", plan.toString(), "@" + arguments).out()).containsOnlyOnce(TITLE);
    assertThat(run("audit", plan.toString()).out()).doesNotContain(TITLE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "../rules       | '../rules' is no way down to a folder",
        "our/../../club | 'our/../../club' is no way down to a folder",
        "/etc           | '/etc' is no way down to a folder",
        ".              | '.' is no way down to a folder",
        ".hidden        | '.hidden' is no way down to a folder",
        "'C:\\rules'    | 'C:\\rules' is no way down to a folder",
        "'our\\rules'   | 'our\\rules' is no way down to a folder",
        "our-rulse      | there is no folder 'our-rulse'",
        "plan.yaml      | there is no folder 'plan.yaml'",
        "[our-rules]    | '0' holds a list",
      })
  void lieBelowTheirHouse(String way, String fault) throws IOException {
    own("our-rules", "value: 4", "value: 1");
    house("own-rules: [" + way + "]");
    Run run = run("audit", plan.toString());
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_DOCUMENT.number());
    assertThat(run.err()).hasLineCount(1).contains("house.yaml:3:15: " + fault);
  }

  @Test
  void areNotReachedThroughALink() throws IOException {
    Path folder = own("away/our-rules", "value: 4", "value: 1");
    Files.createSymbolicLink(club.resolve("linked"), folder);
    Files.createSymbolicLink(club.resolve("halfway"), folder.getParent());
    house("own-rules: [linked]");
    assertThat(run("audit", plan.toString()).err()).contains("'linked' leads through a link");
    house("own-rules: [halfway/our-rules]");
    assertThat(run("audit", plan.toString()).err())
        .contains("'halfway/our-rules' leads through a link");
  }

  private Path own(String name, String from, String to) {
    Map<String, String> texts = RuleFiles.sound();
    texts.computeIfPresent(".yaml", (ending, text) -> text.replace(from, to));
    return RuleFiles.in(club.resolve(name)).with(texts).root();
  }

  private Path copyTo(Path folder) throws IOException {
    for (String name : new String[] {"plan.yaml", "event.yaml", "log.yaml"}) {
      Files.copy(shipped.root().resolve("base").resolve(name), folder.resolve(name));
    }
    return folder.resolve("plan.yaml");
  }

  private void house(String... lines) throws IOException {
    Files.writeString(
        club.resolve("house.yaml"),
        "house:\n  format: 1\n  " + String.join("\n  ", lines) + "\n",
        StandardCharsets.UTF_8);
  }

  private Run run(String... arguments) {
    return Run.in(new Surroundings(home, Run.CLOCK, false, false, Map.of()), arguments);
  }
}
