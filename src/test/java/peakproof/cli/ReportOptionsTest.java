package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several reports of one run, and what is asked of the athlete, as their users call them. */
class ReportOptionsTest {
  private static final List<String> LEAVING = List.of("sarif", "junit", "markdown");

  @Test
  void writesTheSameReportBesideAnotherAsAlone(@TempDir Path folder) throws IOException {
    Path json = folder.resolve("a.json");
    Path sarif = folder.resolve("a.sarif");
    Run both =
        Run.of(
            "audit",
            "plans",
            "--color=always",
            "--report",
            "json=" + json,
            "--report",
            "SARIF=" + sarif,
            "--report",
            "text=" + folder.resolve("a.txt"));
    assertThat(both.code()).isEqualTo(1);
    assertThat(both.out()).contains("\033[");
    assertThat(Files.readString(folder.resolve("a.txt")))
        .isEqualTo(both.out().replaceAll("\033\\[[0-9;]*m", ""));
    assertThat(Files.readString(json)).isEqualTo(Run.of("audit", "plans", "--format=json").out());
    assertThat(Files.readString(sarif)).isEqualTo(Run.of("audit", "plans", "--format=sarif").out());
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(3);
    }
  }

  @Test
  void keepsHealthEntriesAtTheCoachsDesk() {
    for (String format : LEAVING) {
      Run quiet = Run.of("audit", "plans/mateus", "--all", "--format", format);
      assertThat(quiet.code()).isEqualTo(1);
      assertThat(quiet.out()).contains("log.yaml").doesNotContain("achilles", "of 10", "limps");
      Run open = Run.of("audit", "plans/mateus", "--all", "--format", format, "--with-health");
      assertThat(open.out()).contains("achilles");
    }
  }

  @Test
  void refusesAFormatItDoesNotKnowAndAFileTwice(@TempDir Path folder) {
    String file = folder.resolve("a").toString();
    assertThat(Run.of("audit", "plans", "--report", "pdf=" + file).code()).isEqualTo(2);
    assertThat(Run.of("audit", "plans", "--report", file).code()).isEqualTo(2);
    assertThat(Run.of("audit", "plans", "--report", "json=" + file, "--output", file).err())
        .contains("two reports cannot go to one file");
    assertThat(Run.of("audit", "--stream", "--report", "json=" + file).code()).isEqualTo(2);
    assertThat(Path.of(file)).doesNotExist();
  }

  @Test
  void saysWhichFileCannotBeWritten(@TempDir Path folder) {
    Run run = Run.of("audit", "plans", "--report", "json=" + folder.resolve("no/a.json"));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("cannot write").contains("a.json");
  }

  @Test
  void asksTheAthleteAndNeverFailsForWhatWasFound() {
    Run run = Run.of("ask", "plans/noor", "--top", "2");
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("Hello Noor,").contains("\n2. ").doesNotContain("\n3. ");
    assertThat(run.out()).contains("--all").isEqualTo(Run.of("ask", "plans/noor", "--top=2").out());
    assertThat(Run.of("ask", "plans/noor", "--top", "0").code()).isEqualTo(2);
    assertThat(Run.of("ask", "plans/noor", "--format=markdown", "--all").out())
        .contains("## For the coach");
  }
}
