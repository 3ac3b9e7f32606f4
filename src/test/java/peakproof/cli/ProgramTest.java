package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProgramTest {
  @ParameterizedTest
  @ValueSource(strings = {"", "audit", "rules", "rules check", "rules try", "doctor", "completion"})
  void helpsEveryCommandWithAnExampleAndTheExitCodes(String command) {
    Run run = Run.of((command + " --help").strip().split(" "));
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("Usage: peakproof " + command)
        .contains("Example")
        .contains("\n  peakproof " + command)
        .contains("Exit codes:\n  0   nothing found at or above --fail-at\n  1 ")
        .contains("  5   internal error");
  }

  @Test
  void saysItsVersion() {
    assertThat(Run.of("--version").out())
        .matches(
            "peakproof [0-9]+\\.[0-9]+\\.[0-9]+\\R(commit [0-9a-f]{12}.*\\R)?"
                + "Java [0-9]+.*, Drools [0-9]+\\.[0-9]+\\.[0-9]+\\R[0-9]{3} rules\\R");
    assertThat(Run.of("audit", "--version").out()).isEqualTo(Run.of("--version").out());
  }

  @Test
  void takesNothingAtAllForWrongUsage() {
    assertUsage("Missing required subcommand");
    assertUsage("Missing required subcommand", "rules");
    assertUsage("Missing required parameter: 'PATH'", "audit");
  }

  @Test
  void namesTheNearestCommandAndOption() {
    assertUsage("did you mean", "audt", "plans");
    assertUsage("did you mean --format", "audit", "plans", "--fromat");
  }

  @Test
  void refusesValuesItDoesNotKnow() {
    assertUsage("'--format'", "audit", "plans", "--format", "xml");
    assertUsage("'--fail-at'", "audit", "plans", "--fail-at", "bad");
    assertUsage("expected a date such as 2027-05-30", "audit", "plans", "--as-of", "2027-13-01");
    assertUsage("'--top'", "audit", "plans", "--top", "-1");
    assertUsage("expected 40 or more", "audit", "plans", "--width", "39");
    assertUsage("no file at 'nowhere.yaml'", "audit", "plans", "--house", "nowhere.yaml");
    assertUsage("no folder of rules at 'nowhere'", "audit", "plans", "--rules", "nowhere");
    assertUsage("no folder of rules at 'nowhere'", "rules", "try", "nowhere");
    assertUsage("mutually exclusive", "audit", "plans", "--all", "--top", "2");
  }

  @Test
  void reportsItsOwnMistakeWithoutAStackTrace() {
    Run run =
        withBrokenClock(
            () -> {
              throw new IllegalStateException("clock stopped");
            });
    assertThat(run.code()).isEqualTo(5);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("peakproof: internal error: IllegalStateException: clock stopped in peakproof.")
        .contains("Please report")
        .contains(Version.PROGRAM)
        .doesNotContain("\tat ");
    assertThat(run.err().lines()).hasSize(2);
  }

  @Test
  void exitsWithFiveWhenMemoryRunsOut() {
    Run run =
        withBrokenClock(
            () -> {
              throw new OutOfMemoryError("Java heap space");
            });
    assertThat(run.code()).isEqualTo(5);
    assertThat(run.err()).contains("OutOfMemoryError").doesNotContain("\tat ");
  }

  @Test
  void failsWhenTheOutputCannotBeWritten() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int character) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    StringWriter err = new StringWriter();
    int code =
        Program.run(
            new String[] {"--help"},
            InputStream.nullInputStream(),
            new PrintWriter(full, true, StandardCharsets.UTF_8),
            new PrintWriter(err),
            new Surroundings(Path.of(""), Run.CLOCK, false, false, Map.of()));
    assertThat(code).isEqualTo(5);
    assertThat(err.toString()).contains("standard output");
  }

  private static void assertUsage(String message, String... arguments) {
    Run run = Run.of(arguments);
    assertThat(run.code()).as("%s", run).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("peakproof: ").contains(message).contains(" --help");
    assertThat(run.err().lines().count()).isLessThanOrEqualTo(3);
  }

  private static Run withBrokenClock(Supplier<Instant> now) {
    Clock clock =
        new Clock() {
          @Override
          public Instant instant() {
            return now.get();
          }

          @Override
          public ZoneId getZone() {
            return ZoneOffset.UTC;
          }

          @Override
          public Clock withZone(ZoneId zone) {
            return this;
          }
        };
    Surroundings surroundings = new Surroundings(Path.of(""), clock, false, false, Map.of());
    return Run.in(surroundings, "audit", "plans", "--as-of", "today");
  }
}
