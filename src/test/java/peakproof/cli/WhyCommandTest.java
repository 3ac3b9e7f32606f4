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
import peakproof.rule.RuleFiles;

/** Why a rule says what it says of a plan: every outcome there is, and what leads to it. */
class WhyCommandTest {
  @TempDir private Path home;
  private Path plan;

  @BeforeEach
  void ship() throws IOException {
    RuleFiles shipped = RuleFiles.in(home.resolve("rules")).with(RuleFiles.sound());
    Map<String, String> off = RuleFiles.sound();
    off.merge(".yaml", "default: on", (text, old) -> text.replace(old, "default: off"));
    shipped.named("boat-off", off);
    Path folder = Files.createDirectory(home.resolve("lena"));
    for (String file : new String[] {"plan.yaml", "event.yaml", "log.yaml"}) {
      Files.copy(shipped.root().resolve("base").resolve(file), folder.resolve(file));
    }
    plan = folder.resolve("plan.yaml");
  }

  @Test
  void tellsWhatARuleAsksWithoutAPlan() {
    Run run = run("why", "boat-swims");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("asks       A week with more swims than the club's boat can follow.\n")
        .contains("  most 4 swims (card, ")
        .doesNotContain("What it looked at");
  }

  @Test
  void showsTheNearestOfAClearRule() {
    Run run = run("why", "boat-swims", plan.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("as of Sun 30 May 2027: clear; it found nothing to say.\n")
        .contains(
            """
            What it looked at, and how many were left after each question
              15 weeks
                   5  changeable
                   5  known
                   0  swims above 4 (most)
            """)
        .containsPattern(
            "What came nearest\n"
                + "  - week, week of 31 May, plan.yaml:\\d+\n"
                + "        changeable\n"
                + "        known\n"
                + "        but swims 3, not above 4 \\(most\\)\n")
        .contains("  swims (week): Swims.\n");
  }

  @Test
  void showsTheArithmeticOfAFinding() throws IOException {
    append("  settings: {boat-swims: {most: 2, because: a small boat}}\n");
    Run run = run("why", "boat-swims", plan.toString());
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("as of Sun 30 May 2027: found; it says:\nASK        More swims than the boat")
        .contains("most 2 swims (plan, " + plan + ":")
        .containsPattern(
            "Line by line\n"
                + "  - week, week of 31 May, plan.yaml:\\d+\n"
                + "        changeable\n"
                + "        known\n"
                + "        swims 3, above 2 \\(most\\)\n");
  }

  @Test
  void showsWhatTheCoachLivesWith() throws IOException {
    append("  settings: {boat-swims: {most: 2, because: a small boat}}\n");
    append("  accepted: [{rule: boat-swims, because: two boats in June, by: Ada}]\n");
    assertThat(run("why", "boat-swims", plan.toString()).out())
        .contains(": accepted; it found this, and the coach lives with it:\n")
        .contains("accepted   two boats in June, by Ada\n")
        .contains("Line by line\n");
  }

  @Test
  void saysWhichEntryWouldSettleIt() throws IOException {
    Path event = plan.resolveSibling("event.yaml");
    change(event, "water:[^,}\n]*(, )?", "");
    assertThat(run("why", "boat-swims", plan.toString()).out())
        .contains(": not judged; an entry is missing. This would settle it:\n")
        .contains("write      event.swim.water\n")
        .contains("What it looked at");
  }

  @Test
  void saysWhyARuleIsNotForThePlan() throws IOException {
    change(plan.resolveSibling("event.yaml"), "water: *\\w+", "water: pool");
    assertThat(run("why", "boat-swims", plan.toString()).out())
        .contains(": not for this plan; the race swim is in a pool.\n")
        .doesNotContain("What it looked at");
  }

  @Test
  void saysWhyTheHouseSilencedIt() throws IOException {
    Path house = home.resolve("house.yaml");
    String silenced = "  silenced: [{rule: boat-swims, because: we have two boats}]\n";
    Files.writeString(house, "house:\n  format: 1\n" + silenced, StandardCharsets.UTF_8);
    assertThat(run("why", "boat-swims", plan.toString()).out())
        .contains(": silenced by the house; we have two boats.\n")
        .contains("silenced   we have two boats (house, ")
        .doesNotContain("What it looked at");
  }

  @Test
  void triesARuleThatIsOff() {
    assertThat(run("why", "boat-off", plan.toString()).out())
        .contains("The rule is off; this is what it would say if the house asked for it.\n")
        .contains("What came nearest");
  }

  @Test
  void judgesFromAnotherDay() {
    assertThat(run("why", "boat-swims", plan.toString(), "--as-of", "2027-06-21").out())
        .contains("as of Mon 21 Jun 2027");
  }

  @Test
  void tellsEveryUserError() throws IOException {
    assertThat(run("why", "boat-swmis", plan.toString()).err())
        .contains("did you mean 'boat-swims'?");
    Run noPlan = run("why", "boat-swims", home.resolve("nobody").toString());
    assertThat(noPlan.code()).isEqualTo(ExitCode.WRONG_USAGE.number());
    assertThat(noPlan.err()).contains("no plan at");
    append("  settings: {boat-swims: {mots: 2, because: a small boat}}\n");
    Run wrong = run("why", "boat-swims", plan.toString());
    assertThat(wrong.code()).isEqualTo(ExitCode.WRONG_DOCUMENT.number());
    assertThat(wrong.err()).contains("'mots' is no setting of boat-swims");
    assertThat(wrong.out()).isEmpty();
  }

  private void append(String text) throws IOException {
    Files.writeString(
        plan, Files.readString(plan, StandardCharsets.UTF_8) + text, StandardCharsets.UTF_8);
  }

  private static void change(Path file, String pattern, String instead) throws IOException {
    String text = Files.readString(file, StandardCharsets.UTF_8);
    String changed = text.replaceFirst(pattern, instead);
    assertThat(changed).isNotEqualTo(text);
    Files.writeString(file, changed, StandardCharsets.UTF_8);
  }

  /** Wide, so that no line is broken by the length of the temporary folder's name. */
  private Run run(String... arguments) {
    String[] wide = java.util.Arrays.copyOf(arguments, arguments.length + 2);
    wide[arguments.length] = "--width";
    wide[arguments.length + 1] = "500";
    return Run.in(new Surroundings(home, Run.CLOCK, false, false, Map.of()), wide);
  }
}
