package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.Repository;

class AcceptTest {
  private static final String RULE = "swim-open-water-none";

  /** Rules are compiled for the first run only. */
  @TempDir private static Path cache;

  @TempDir private Path folder;
  private Path plan;
  private String before;

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
    assertThat(run("audit", plan.toString(), "--because=x").err()).contains("needs '--accept'");
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
    return run(all.toArray(String[]::new));
  }

  private static Run run(String... arguments) {
    Path home = Path.of("").toAbsolutePath();
    Map<String, String> environment = Map.of("XDG_CACHE_HOME", cache.toString());
    return Run.in(new Surroundings(home, Run.CLOCK, false, false, environment), arguments);
  }
}
