package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.Repository;

class AcceptTest {
  private static final String RULE = "swim-open-water-none";

  @TempDir private static Path home;
  private static FewRules rules;

  @TempDir private Path folder;
  private Path plan;
  private String before;

  @BeforeAll
  static void takeRules() throws IOException {
    rules = FewRules.in(home);
  }

  @BeforeEach
  void begin() throws IOException {
    plan = Repository.of(folder, "noor").file("plans/noor/plan.yaml");
    before = Files.readString(plan);
  }

  @Test
  void writesOneEntryAndNothingElse() throws IOException {
    Run run =
        accept(RULE, "--because= sea swim: \"booked\" ", "--by", "MK", "--until", "2027-06-20");
    assertThat(run.code()).as(run.err()).isZero();
    String entry =
        """
          accepted:
            - rule: swim-open-water-none
              because: 'sea swim: "booked"'
              by: MK
              until: 2027-06-20
        """;
    assertThat(Files.readString(plan)).isEqualTo(before + entry);
    assertThat(accept("strength-none", "--because", "x").code()).isEqualTo(2);
    assertThat(accept("brick-none", "--because=no bike trainer", "--week=2027-06-07").code())
        .isZero();
    assertThat(Files.readString(plan))
        .isEqualTo(
            before
                + entry
                + """
                    - rule: brick-none
                      week: 2027-06-07
                      because: no bike trainer
                """);
  }

  @Test
  void refusesWhatWouldNotCount() throws IOException {
    refuses("is a HOLD", RULE, "--because=x", "--by=MK");
    refuses("'--because'", RULE, "--because", " ");
    refuses("is over on", RULE, "--because=x", "--by=MK", "--until=2027-05-01");
    refuses("finds nothing", "taper-missing", "--because=x");
    refuses("did you mean 'brick-none'", "brick-non", "--because=x");
    refuses("on that day", "brick-none", "--because=x", "--day=2027-08-01");
    refuses("Monday", "brick-none", "--because=x", "--week=2027-06-08");
    assertThat(rules.run("audit", plan.toString(), "--because=x").err())
        .contains("needs '--accept'");
  }

  @Test
  void reportsEntriesThatExpiredOrMatchNothing() throws IOException {
    Files.writeString(
        plan,
        before
            + """
              accepted:
                - {rule: brick-none, because: no trainer, until: 2027-05-20}
                - {rule: taper-missing, because: once}
            """);
    for (String format : List.of("text", "markdown", "json")) {
      assertThat(rules.run("audit", plan.toString(), "--width=400", "--format", format).out())
          .contains("brick-none was accepted until 2027-05-20 and is back")
          .contains("taper-missing is accepted, but there is nothing left to accept");
    }
  }

  private void refuses(String why, String... options) throws IOException {
    Run run = accept(options);
    assertThat(run.code()).as(run.err()).isEqualTo(2);
    assertThat(run.err()).contains(why);
    assertThat(Files.readString(plan)).isEqualTo(before);
  }

  private Run accept(String... options) {
    List<String> all = new ArrayList<>(List.of("audit", plan.toString(), "--accept"));
    all.addAll(Arrays.asList(options));
    return rules.run(all.toArray(String[]::new));
  }
}
