package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import peakproof.rule.RuleFiles;
import peakproof.rule.TestClassPath;

/** Rules that pass every check and still would not come to their end. */
class RunawayRuleTest {
  private static final String PATTERN =
      """
      $week : Week( changeable, known, $swims : swims,
                        swims > $set.count("most") )
      """;

  /** Each tied to the first by something that is almost always so. */
  private static final String EVERYTHING_WITH_EVERYTHING =
      """
      Session( $day : date )
          Session( date != $day )
          Session( date != $day )
          $week : Week( starts != $day, $swims : swims )
      """;

  private static final String PAIRS =
      """
      Session( $day : date )
          Session( date != $day )
          $week : Week( starts != $day, $swims : swims )
      """;

  @TempDir private Path home;
  private RuleFiles files;

  @BeforeEach
  void ship() {
    files = RuleFiles.in(home.resolve("rules"));
  }

  @Test
  @Timeout(100)
  void isEndedWhenItTakesTooLong() throws IOException, InterruptedException {
    write(EVERYTHING_WITH_EVERYTHING);
    assertEnded("ran for more than 700 ms", "-Xmx900m", "-Dpeakproof.rules.patience=700");
  }

  @Test
  @Timeout(100)
  void isEndedWhenItTakesAllMemory() throws IOException, InterruptedException {
    write(EVERYTHING_WITH_EVERYTHING);
    assertEnded("takes more memory than there is", "-Xmx96m", "-Dpeakproof.rules.patience=90000");
  }

  @Test
  @Timeout(100)
  void isEndedWhenItReportsWithoutEnd() {
    write(PAIRS);
    Run run =
        Run.in(
            new Surroundings(home, Run.CLOCK, false, false, Map.of()),
            "audit",
            home.resolve("rules/base/plan.yaml").toString());
    assertThat(run.err()).isEqualTo(fault("reported more than 100000 times"));
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_RULE.number());
    assertThat(
            Run.in(new Surroundings(home, Run.CLOCK, false, false, Map.of()), "rules", "try")
                .code())
        .isEqualTo(ExitCode.WRONG_RULE.number());
  }

  private void write(String facts) {
    Map<String, String> texts = RuleFiles.sound();
    texts.merge(".drl", PATTERN.strip(), (text, old) -> text.replace(old, facts.strip()));
    files.with(texts);
  }

  private String fault(String what) {
    return files.root()
        + "/swim/boat-swims.drl:1:1: the rule 'boat-swims' "
        + what
        + "; a rule is done with a plan in a blink; tie its facts together by what they have in"
        + " common, such as the same week\n";
  }

  private void assertEnded(String what, String... options)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(Arrays.asList(options));
    command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
    command.add("-Dpeakproof.home=" + home);
    command.addAll(List.of("-cp", TestClassPath.text(), "peakproof.Main", "audit"));
    command.add(home.resolve("rules/base/plan.yaml").toString());
    Path said = home.resolve("said");
    Process run =
        new ProcessBuilder(command)
            .directory(home.toFile())
            .redirectError(said.toFile())
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertThat(run.waitFor(95, TimeUnit.SECONDS)).isTrue();
    String text = Files.readString(said, StandardCharsets.UTF_8);
    assertThat(text.replace("rules/swim", files.root() + "/swim")).isEqualTo(fault(what));
    assertThat(run.exitValue()).isEqualTo(ExitCode.WRONG_RULE.number());
  }
}
