package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WarmCommandTest {
  private static final String NO_ARCHIVE =
      "Archive: none; it is made when the launcher 'peakproof' starts this\n";

  @TempDir private Path folder;

  private Run warm(String... arguments) {
    return Run.in(
        new Surroundings(
            Path.of("").toAbsolutePath(),
            Run.CLOCK,
            false,
            false,
            Map.of("XDG_CACHE_HOME", folder.resolve("cache").toString())),
        arguments);
  }

  @Test
  void makesNoArchiveWithoutTheLauncher() {
    Run run = warm("warm");
    assertThat(run.code()).isZero();
    assertThat(run.out()).isEqualTo(NO_ARCHIVE + "Rules: ready\n");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void readiesTheRulesOfTheHouseAboveAPlan() throws IOException {
    Path own = club("plans/mateus");
    assertThat(warm("rules", "new", "our-first", "--theme", "run", "--dir", own + "").code())
        .isZero();
    Run run = warm("warm", folder.resolve("club").toString());
    assertThat(run.out()).isEqualTo(NO_ARCHIVE + "Rules: ready\n");
    assertThat(run.code()).isZero();
  }

  @Test
  void tellsWhichOfTheClubsRulesAreWrong() throws IOException {
    Path rule = Files.createDirectories(club("plans/mateus").resolve("run")).resolve("mine.drl");
    Files.writeString(rule, "rule", StandardCharsets.UTF_8);
    Run run = warm("warm", folder.resolve("club").toString());
    assertThat(run.code()).isEqualTo(4);
    assertThat(run.out()).endsWith("Rules: those without a fault are ready\n");
    assertThat(run.err()).contains("mine");
  }

  /** A club with a plan, and a folder for rules of its own, which is given. */
  private Path club(String athlete) throws IOException {
    Path plans = Files.createDirectories(folder.resolve("club/plans/a"));
    Path events = Files.createDirectories(folder.resolve("club/plans/events"));
    Path from = Path.of(athlete);
    for (String name : new String[] {"plan.yaml", "log.yaml"}) {
      Files.copy(from.resolve(name), plans.resolve(name));
    }
    try (var files = Files.list(from.resolveSibling("events"))) {
      for (Path event : files.toList()) {
        Files.copy(event, events.resolve(event.getFileName()));
      }
    }
    Path own = Files.createDirectories(folder.resolve("club/own"));
    Files.writeString(
        folder.resolve("club/house.yaml"),
        "house:\n  format: 1\n  own-rules: [own]\n",
        StandardCharsets.UTF_8);
    return own;
  }
}
