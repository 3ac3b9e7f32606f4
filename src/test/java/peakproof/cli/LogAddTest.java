package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One session from the command line, in the words of a log. */
class LogAddTest {
  @TempDir private Path folder;
  private Path log;

  @BeforeEach
  void name() {
    log = folder.resolve("log.yaml");
  }

  private Run adding(String... options) {
    List<String> arguments =
        new ArrayList<>(List.of("log", "add", log.toString(), "--date", "2027-05-30"));
    arguments.addAll(List.of(options));
    return Run.of(arguments.toArray(String[]::new));
  }

  private String read() throws IOException {
    return Files.readString(log, StandardCharsets.UTF_8);
  }

  @Test
  void beginsALogWithEveryKey() throws IOException {
    Run run =
        adding(
            "--swim",
            "400 easy, 8x100 hard r20s",
            "--time",
            "34min",
            "--rpe",
            "6",
            "--heart-rate",
            "142bpm",
            "--held",
            "1:41/100m",
            "--at",
            "06:30",
            "--where",
            "open-water",
            "--company",
            "group",
            "--kit",
            "wetsuit,paddles",
            "--practise",
            "sighting",
            "--note",
            "cold: 14C");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(read())
        .isEqualTo(
            """
            log:
              format: 1
              days:
                2027-05-30:
                  sessions:
                    - swim: 400 easy, 8x100 hard r20s
                      time: 34min
                      rpe: 6
                      heart-rate: 142bpm
                      held: 1:41/100m
                      at: 06:30
                      where: open-water
                      company: group
                      note: 'cold: 14C'
                      kit: [wetsuit, paddles]
                      practise: [sighting]
            """);
  }

  @Test
  void addsAnotherOnlyWhenAsked() throws IOException {
    assertThat(adding("--run", "40min").out()).contains("added. ").contains("is begun.");
    String once = read();
    assertThat(adding("--run", "41min").out())
        .contains("skipped: the log has it, ")
        .contains("log.yaml:6:11");
    assertThat(read()).isEqualTo(once);
    assertThat(adding("--run", "41min", "--another").out()).contains("has them now.");
    assertThat(read()).isEqualTo(once + "        - run: 41min\n");
  }

  @Test
  void leavesARestDayAlone() throws IOException {
    String rest = "log:\n  format: 1\n  days:\n    2027-05-30: rest\n";
    Files.writeString(log, rest, StandardCharsets.UTF_8);
    assertThat(adding("--run", "40min", "--another").out())
        .contains("skipped: the log says rest")
        .contains("take that out first");
    assertThat(read()).isEqualTo(rest);
  }

  @Test
  void wantsRoomForEveryKey() throws IOException {
    Files.writeString(
        log, "log:\n  format: 1\n  days:\n    2027-05-30: sleep 7h\n", StandardCharsets.UTF_8);
    Run run = adding("--run", "40min", "--where", "road");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("is on one line in this log, which has no room for where");
    assertThat(adding("--run", "40min").code()).isZero();
    assertThat(read()).endsWith("2027-05-30: sleep 7h; run 40min\n");
    assertThat(adding("--swim", "4x100 hard r20s").code()).isEqualTo(3);
  }

  @Test
  void saysWhatIsWrongWithAnOption() {
    assertThat(adding().err()).contains("--swim").contains("--run");
    assertThat(adding("--run", "40").err())
        .contains("peakproof: '40' has no unit; expected a distance or duration");
    assertThat(adding("--run", "40min", "--swim", "1km").code()).isEqualTo(2);
    assertThat(adding("--run", "40min", "--kit", "wetsiut").err())
        .contains("did you mean 'wetsuit'?");
    assertThat(adding("--run", "40min", "--rpe", "11").code()).isEqualTo(2);
    Run run = Run.of("log", "add", log.toString(), "--date", "30.5.2027", "--run", "1h");
    assertThat(run.err()).contains("'30.5.2027' is no date; expected a date such as 2027-06-12");
    assertThat(Files.exists(log)).isFalse();
  }
}
