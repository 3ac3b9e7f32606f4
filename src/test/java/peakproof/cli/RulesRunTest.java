package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.rule.RuleFiles;

/** Whole runs with rules that are broken, doubled, hostile or without cases. */
class RulesRunTest {
  @TempDir private Path home;
  private RuleFiles shipped;
  private Path plan;

  @BeforeEach
  void ship() {
    shipped = RuleFiles.in(home.resolve("rules")).with(RuleFiles.sound());
    plan = shipped.root().resolve("base/plan.yaml");
  }

  @Test
  void auditPrintsWhatTheOthersFoundWhenAClubsRuleIsBroken() {
    shipped.with(changed(".yaml", "value: 4", "value: 1"));
    RuleFiles own = RuleFiles.in(home.resolve("own"));
    own.named("boat-broken", changed(".drl", "changeable", "changeabel"));
    Run run = run("audit", plan.toString(), "--rules", own.root().toString());
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_RULE.number());
    assertThat(run.out())
        .contains("More swims than the boat can follow")
        .contains("Incomplete: a broken rule could not run, so it may have missed more.");
    assertThat(run.err())
        .isEqualTo(
            own.root()
                + "/swim/boat-broken.drl:9:19: 'Week' has no field 'changeabel'; a field of the"
                + " fact; did you mean 'changeable'?\n");
  }

  @Test
  void auditIsNotIncompleteWithSoundRules() {
    Run run = run("audit", plan.toString());
    assertThat(run.code()).isZero();
    assertThat(run.out()).doesNotContain("Incomplete");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void auditJudgesByNoCardThatDoesNotFitItsRule() {
    Map<String, String> texts = changed(".yaml", "value: 4", "value: 1");
    texts.merge(".yaml", "{week.label}", (text, field) -> text.replace(field, "{week.lable}"));
    shipped.with(texts);
    Run run = run("audit", plan.toString());
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_RULE.number());
    assertThat(run.out()).contains("Incomplete").doesNotContain("More swims");
    assertThat(run.err()).contains(".yaml:14:6: '{week.lable}' is no field").hasLineCount(1);
  }

  @Test
  void auditSaysSoWhenNoRuleIsLeft() {
    shipped.with(changed(".drl", "changeable", "changeabel"));
    Run run = run("audit", plan.toString());
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_RULE.number());
    assertThat(run.out()).contains("Incomplete");
    assertThat(run.err()).contains("did you mean 'changeable'?").hasLineCount(1);
  }

  @Test
  void checkListsTheFaultsOfAllFiles() {
    RuleFiles own = RuleFiles.in(home.resolve("own"));
    own.named("boat-a", changed(".drl", "changeable", "changeabel"));
    own.named("boat-b", changed(".yaml", "ASK", "AKS"));
    for (Run run :
        new Run[] {
          run("rules", "check", own.root().toString()),
          run("rules", "check", "--rules", own.root().toString())
        }) {
      assertThat(run.code()).isEqualTo(ExitCode.WRONG_RULE.number());
      assertThat(run.out()).isEmpty();
      assertThat(run.err()).hasLineCount(2).contains("boat-a.drl:9:19: ", "boat-b.yaml:3:11: ");
    }
  }

  @Test
  void meansTheShippedRulesByWhateverPath() throws IOException {
    Path link = Files.createSymbolicLink(home.resolve("link"), shipped.root());
    Path round = shipped.root().resolve("../rules");
    for (Path same : new Path[] {shipped.root(), round, link, shipped.root().resolve("swim")}) {
      Run tried = run("rules", "try", same.toString());
      assertThat(tried.err()).isEmpty();
      assertThat(tried.out()).isEqualTo("2 cases of 1 rule tried, 0 failed\n");
      assertThat(tried.code()).isZero();
      Run checked = run("rules", "check", "--rules", same.toString(), same.toString());
      assertThat(checked.err()).isEmpty();
      assertThat(checked.code()).isZero();
    }
  }

  @Test
  void tryFailsForARuleWithoutACase() {
    Map<String, String> texts = RuleFiles.sound();
    texts.put(".cases.yaml", "wrong: []\nfine: []\n");
    shipped.with(texts);
    Run run = run("rules", "try");
    assertThat(run.err()).isEqualTo("boat-swims: no case\n");
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_RULE.number());
  }

  @Test
  void tryFailsForACaseThatFindsSomethingElse() {
    shipped.with(changed(".cases.yaml", "finds: {boat-swims: ASK}", "finds: {boat-swims: FIX}"));
    Run run = run("rules", "try");
    assertThat(run.out())
        .isEqualTo(
            "boat-swims, the boat is away: boat-swims is ASK, the case asks for FIX\n"
                + "2 cases of 1 rule tried, 1 failed\n");
    assertThat(run.code()).isEqualTo(ExitCode.FOUND.number());
  }

  @Test
  void printsNoEscapeOfACard() {
    Map<String, String> texts = changed(".yaml", "value: 4", "value: 1");
    texts.merge(
        ".yaml", "title: More", (text, old) -> text.replace(old, "title: \"\\e[2J\\a{most}"));
    texts.merge(".yaml", "follow\nsev", (text, old) -> text.replace(old, "follow\"\nsev"));
    shipped.with(texts);
    Run run = run("audit", plan.toString(), "--all");
    assertThat(run.out()).contains("{most} swims than").doesNotContain("\033", "\007");
  }

  @Test
  void takesNoWordOfTheHouseForCode() {
    shipped.with(changed(".yaml", "value: 4", "value: 1"));
    shipped.put(
        "house.yaml",
        """
        house:
          format: 1
          name: Tidemill Tri
          words:
            boat-swims: {do: "{week.class} ${java.lang.Runtime} \\e[2J"}
        """);
    Run run = run("audit", plan.toString(), "--house", shipped.root() + "/house.yaml", "--all");
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("'{week.class}' is no placeholder of boat-swims")
        .doesNotContain("internal error", "\033");
  }

  private static Map<String, String> changed(String ending, String old, String instead) {
    Map<String, String> texts = RuleFiles.sound();
    texts.merge(ending, old, (text, was) -> text.replace(was, instead));
    return texts;
  }

  private Run run(String... arguments) {
    return Run.in(new Surroundings(home, Run.CLOCK, false, false, Map.of()), arguments);
  }
}
