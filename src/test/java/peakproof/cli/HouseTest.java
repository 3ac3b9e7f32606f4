package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A club's own house file, on the plan of an athlete who swims in the open alone. */
class HouseTest {
  @TempDir private Path folder;

  @BeforeEach
  void writesThePlan() throws IOException {
    Files.writeString(
        folder.resolve("plan.yaml"),
        """
        plan:
          format: 1
          athlete: {name: Lena Brandl}
          event:
            name: Weiherburg Half
            date: 2027-06-20
            legs: {swim: 1.9km, bike: 90km, run: half-marathon}
            swim: {water: lake}
          weeks:
            - starts: 2027-05-31
              days:
                tue:
                  - bike: tuesday-fives
                wed:
                  - swim: 1200 easy
                    where: open-water
                    company: alone
        """);
  }

  @Test
  void namesASession() throws IOException {
    Run run = audit("sessions: {tuesday-fives: \"20min easy, 5x5min hard r3min, 15min easy\"}");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(1);
  }

  @Test
  void tellsASessionItDoesNotName() throws IOException {
    Run run = audit("sessions: {tuesday-tens: \"20min easy, 10x1min hard r1min\"}");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err())
        .contains(
            "plan.yaml:13:19: the house has no session 'tuesday-fives'; expected a set line, or"
                + " one of: tuesday-tens; ");
  }

  @Test
  void tellsWhatIsWrongInANamedSessionWhereItIsWritten() throws IOException {
    Run run = audit("sessions: {tuesday-fives: \"20min eesy\"}");
    assertThat(run.err()).contains("house.yaml:4:36: 'eesy' is no word of a set line");
  }

  @Test
  void refusesANameThatIsNone() throws IOException {
    Run run = audit("sessions: {5x5: 20min easy}");
    assertThat(run.err()).contains("house.yaml:4:14: '5x5' is no name for a session");
  }

  @Test
  void putsACardInItsOwnWords() throws IOException {
    Run run =
        audit(
            FIVES,
            "words:",
            "  swim-alone-open-water:",
            "    do: Thursday 18:30 at the quarry; ask for the spare wetsuit.",
            "    care: \"Never alone, not even {swim.label}.\"");
    assertThat(run.out())
        .contains("do    Thursday 18:30 at the quarry; ask for the spare wetsuit.")
        .contains("care  Never alone, not even swim 1200 easy.")
        .contains("changed by the house: swim-alone-open-water words of do, care");
  }

  @Test
  void keepsTheCautionAndTheNumbers() throws IOException {
    Run run =
        audit(
            FIVES,
            "words:",
            "  swim-alone-open-water: {care: none, why: \"{swim.labl} again\"}",
            "  swim-alone: {do: nothing}");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err())
        .contains("the caution of swim-alone-open-water cannot be taken away")
        .contains("'{swim.labl}' is no placeholder of swim-alone-open-water")
        .contains("did you mean 'swim.label'?")
        .contains("there is no rule 'swim-alone'");
  }

  @Test
  void capsASeverityAndSaysSoAtTheTop() throws IOException {
    Run run = audit(FIVES, "at-most: {swim-alone-open-water: FIX}");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("HOLD rule lowered by the house: swim-alone-open-water at most FIX")
        .contains("FIX     1  Open-water swim planned alone");
    Run raised = audit(FIVES, "at-most: {swim-alone-open-water: HOLD}");
    assertThat(raised.code()).isEqualTo(1);
    assertThat(raised.out()).doesNotContain("lowered");
  }

  @Test
  void saysTheCautionOfEachDeclaredConditionOnce() throws IOException {
    Path plan = folder.resolve("plan.yaml");
    String asthma = "{name: Lena Brandl, health: {conditions: [asthma, diabetes]}}";
    Files.writeString(plan, Files.readString(plan).replace("{name: Lena Brandl}", asthma));
    assertThat(audit(FIVES).out())
        .containsOnlyOnce("care, asthma: the reliever goes along")
        .containsOnlyOnce("care, diabetes: ")
        .doesNotContain("care, gut");
  }

  private static final String FIVES =
      "sessions: {tuesday-fives: \"20min easy, 5x5min hard r3min, 15min easy\"}";

  private Run audit(String... house) throws IOException {
    Files.writeString(
        folder.resolve("house.yaml"),
        "house:\n  format: 1\n  name: Tidemill Tri\n  " + String.join("\n  ", house) + "\n");
    return Run.of("audit", folder.toString());
  }
}
