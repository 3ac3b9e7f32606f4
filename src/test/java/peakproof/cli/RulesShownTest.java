package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.rule.RuleFiles;

/** The list of rules and the sheet of one, with what house and plan put in the card's place. */
class RulesShownTest {
  @TempDir private Path home;
  private RuleFiles shipped;

  @BeforeEach
  void ship() {
    Map<String, String> texts = RuleFiles.sound();
    texts.merge(".yaml", "was: []", (text, old) -> text.replace(old, "was: [boat-full]"));
    shipped = RuleFiles.in(home.resolve("rules")).with(texts);
    shipped.named("boat-off", off(RuleFiles.sound()));
  }

  private static Map<String, String> off(Map<String, String> texts) {
    texts.merge(".yaml", "default: on", (text, old) -> text.replace(old, "default: off"));
    return texts;
  }

  @Test
  void listsARuleALineUnderItsTheme() {
    Run run = run("rules", "list");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .isEqualTo(
            """
            swim
              boat-off    ASK to FIX  More swims than the boat can follow [off]
              boat-swims  ASK to FIX  More swims than the boat can follow

            2 rules · 1 off until a house asks for it
            'peakproof rules show RULE' shows one of them with all its numbers.
            """);
  }

  @Test
  void marksWhatTheHouseSilencesTurnsOnAndChanges() {
    Path house =
        house("  use: [boat-off]\n  silenced: [{rule: boat-full, because: we have two boats}]\n");
    Run run = run("rules", "list", "--house", house.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("follow [changed]\n", "follow [silenced]\n")
        .contains("2 rules · 1 silenced · 1 changed by house or plan");
  }

  @Test
  void listsTheSeverityAsTheHouseHasIt() {
    Path house = house("  severity: {boat-off: NOTE}\n  at-most: {boat-swims: ASK}\n");
    Run run = run("rules", "list", "--house", house.toString());
    assertThat(run.out()).contains("boat-off    NOTE  More", "boat-swims  ASK   More");
  }

  @Test
  void listsForOtherPrograms() throws IOException {
    Path house = house("  settings: {boat-full: {most: 6}}\n");
    Run run = run("rules", "list", "--format", "json", "--house", house.toString());
    JsonNode rule = new ObjectMapper().readTree(run.out()).at("/rules/1");
    assertThat(rule.at("/rule").asText()).isEqualTo("boat-swims");
    assertThat(rule.at("/heaviest").asText()).isEqualTo("FIX");
    assertThat(rule.at("/on").asBoolean()).isTrue();
    JsonNode setting = rule.at("/settings/0");
    assertThat(setting.at("/value").asText()).isEqualTo("6");
    assertThat(setting.at("/shipped").asText()).isEqualTo("4");
    assertThat(setting.at("/by").asText()).isEqualTo("house");
    assertThat(setting.at("/file").asText()).isEqualTo(house.toString());
    assertThat(setting.at("/line").asInt()).isEqualTo(4);
  }

  @Test
  void listsOneTheme() {
    assertThat(run("rules", "list", "--theme", "swim").out()).contains("boat-swims");
    Run run = run("rules", "list", "--theme", "swmi");
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
    assertThat(run.err()).contains("there is no theme 'swmi'; did you mean 'swim'?");
    assertThat(run("rules", "list", "--theme", "golf").err()).contains("the themes are swim\n");
  }

  @Test
  void tellsWhatIsWrongInTheHouse() {
    Path house = house("  settings: {boat-swims: {mots: 3}}\n");
    for (String[] command : new String[][] {{"list"}, {"show", "boat-swims"}}) {
      String[] all = {"rules", command[0], "--house", house.toString()};
      Run run = command.length == 1 ? run(all) : run(all[0], all[1], command[1], all[2], all[3]);
      assertThat(run.code()).isEqualTo(ExitCode.WRONG_DOCUMENT.number());
      assertThat(run.out()).isEmpty();
      assertThat(run.err())
          .startsWith(house + ":4:")
          .contains("'mots' is no setting of boat-swims", "did you mean 'most'?");
    }
  }

  @Test
  void showsARuleWithItsCardsNumbers() {
    Run run = run("rules", "show", "boat-swims");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith("boat-swims · swim · ASK to FIX\nMore swims than the boat can follow\n")
        .contains("asks       A week with more swims than the club's boat can follow.\n")
        .contains("silent     Silent in weeks that are not known whole.\n")
        .contains("severity   ASK; FIX above 5\n")
        .contains("rests on   coaching convention")
        .contains("for        races in open water; full or half distance\n")
        .contains("needs      event.swim.water\n")
        .contains("once named boat-full\n")
        .contains("  most 4 swims (card, " + home + "/rules/swim/boat-swims.yaml:13)\n")
        .contains("swims the boat can follow; from 0 to 7\n")
        .contains("do         Turn one of them into a pool session.\n");
  }

  @Test
  void showsARuleByItsFormerName() {
    assertThat(run("rules", "show", "boat-full").out()).startsWith("boat-swims · ");
  }

  @Test
  void showsWhichFileANumberComesFrom() throws IOException {
    Path house = house("  settings: {boat-swims: {most: 6}}\n  severity: {boat-swims: NOTE}\n");
    assertThat(run("rules", "show", "boat-swims", "--house", house.toString()).out())
        .contains("most 6 swims (house, " + house + ":4); shipped: 4\n")
        .contains("changed    severity NOTE (house, " + house + ":5)\n")
        .startsWith("boat-swims · swim · NOTE\n");
    Path plan = Files.createDirectory(home.resolve("lena")).resolve("plan.yaml");
    String text = Files.readString(shipped.root().resolve("base/plan.yaml"));
    Files.writeString(
        plan,
        text + "  settings: {boat-full: {most: 5, because: a small lake}}\n",
        StandardCharsets.UTF_8);
    Files.copy(shipped.root().resolve("base/event.yaml"), plan.resolveSibling("event.yaml"));
    long line = text.lines().count() + 1;
    Run run = run("rules", "show", "boat-swims", plan.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("most 5 swims (plan, " + plan + ":" + line + "); shipped: 4\n");
    assertThat(run("rules", "show", "boat-swims", plan.getParent().toString()).out())
        .isEqualTo(run.out());
  }

  @Test
  void showsWhyARuleIsTurnedOff() {
    Path house = house("  silenced: [{rule: boat-swims, because: we have two boats}]\n");
    assertThat(run("rules", "show", "boat-swims", "--house", house.toString()).out())
        .contains("silenced   we have two boats (house, " + house + ":4)");
    assertThat(run("rules", "show", "boat-off").out())
        .contains("off        until a house file asks for it: use: [boat-off]\n");
  }

  @Test
  void namesTheNearestRuleForAMisspeltOne() {
    Run run = run("rules", "show", "boat-swins");
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
    assertThat(run.err()).contains("there is no rule 'boat-swins'; did you mean 'boat-swims'?");
    assertThat(run("rules", "show", "swims-with-boats").err()).contains("akin: boat-swims;");
    assertThat(run("rules", "show", "xyz").err()).contains("'peakproof rules list' names them all");
  }

  @Test
  void tellsThatARuleIsBrokenAndShowsTheOthers() {
    shipped.put(
        "swim/boat-off.drl",
        RuleFiles.sound().get(".drl").replace("boat-swims", "boat-off").replace("known", "knwon"));
    Run broken = run("rules", "show", "boat-off");
    assertThat(broken.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
    assertThat(broken.err())
        .contains("boat-off.drl:9:")
        .contains("the rule 'boat-off' is broken; mend what 'peakproof rules check' lists");
    Run other = run("rules", "show", "boat-swims");
    assertThat(other.out()).contains("most 4 swims");
    assertThat(other.code()).isEqualTo(ExitCode.WRONG_RULE.number());
  }

  @Test
  void tellsThatThereIsNoSuchPlanOrHouse() {
    Run plan = run("rules", "show", "boat-swims", home.resolve("lena").toString());
    assertThat(plan.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
    assertThat(plan.err()).contains("no plan at '" + home.resolve("lena") + "'");
    Run house = run("rules", "list", "--house", home.resolve("house.yaml").toString());
    assertThat(house.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
    assertThat(house.err()).contains("no file at '" + home.resolve("house.yaml") + "'");
  }

  private Path house(String more) {
    shipped.put("../house.yaml", "house:\n  format: 1\n  name: Tidemill Tri\n" + more);
    return home.resolve("rules/../house.yaml");
  }

  /** Wide, so that no line is broken by the length of the temporary folder's name. */
  private Run run(String... arguments) {
    String[] wide = Arrays.copyOf(arguments, arguments.length + 2);
    wide[arguments.length] = "--width";
    wide[arguments.length + 1] = "500";
    return Run.in(new Surroundings(home, Run.CLOCK, false, false, Map.of()), wide);
  }
}
