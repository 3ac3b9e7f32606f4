package peakproof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import peakproof.cli.Program;
import peakproof.cli.Surroundings;

/** Holds the README to what the program does. {@code -Dgolden=update} rewrites its run. */
class ReadmeTest {
  private static final Path README = Path.of("README.md");
  private static final Pattern RUN =
      Pattern.compile(
          "```\n\\$ \\./peakproof (?<arguments>[^\n]+)\n(?<output>.*?)```\n", Pattern.DOTALL);

  @Test
  void showsARunAsItIs() throws IOException {
    String readme = Files.readString(README, StandardCharsets.UTF_8);
    Matcher run = RUN.matcher(readme);
    assertThat(run.find()).as("a run in the README").isTrue();
    String output = output(run.group("arguments").split(" ", -1));
    if ("update".equals(System.getProperty("golden")) && System.getenv("CI") == null) {
      String updated =
          readme.substring(0, run.start("output")) + output + readme.substring(run.end("output"));
      Files.writeString(README, updated, StandardCharsets.UTF_8);
    } else {
      assertThat(run.group("output")).isEqualTo(output);
    }
  }

  @Test
  void isShortEnoughToBeRead() throws IOException {
    assertThat(Files.readAllLines(README, StandardCharsets.UTF_8)).hasSizeLessThan(120);
  }

  private static String output(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Clock clock = Clock.fixed(Instant.parse("2027-06-01T20:00:00Z"), ZoneOffset.UTC);
    Surroundings surroundings =
        new Surroundings(Path.of("").toAbsolutePath(), clock, false, false, Map.of());
    Program.run(
        arguments,
        InputStream.nullInputStream(),
        new PrintWriter(out),
        new PrintWriter(err),
        surroundings);
    assertThat(err.toString()).isEmpty();
    return out.toString();
  }
}
