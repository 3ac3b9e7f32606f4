package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DoctorCommandTest {
  private static final Path HERE = Path.of("").toAbsolutePath();

  @TempDir private Path folder;

  private Run doctor(Path home, Map<String, String> environment, String... arguments) {
    Map<String, String> all = new HashMap<>(environment);
    all.putIfAbsent("XDG_CACHE_HOME", folder.resolve("cache").toString());
    String[] command = new String[arguments.length + 1];
    command[0] = "doctor";
    System.arraycopy(arguments, 0, command, 1, arguments.length);
    return Run.in(new Surroundings(home, Run.CLOCK, false, false, all), command);
  }

  @Test
  void saysOfEachThingThatItIsFineOrWhatToDo() throws IOException {
    Path archive = Files.write(folder.resolve("java.jsa"), new byte[2_500_000]);
    Run run = doctor(HERE, Map.of("PEAKPROOF_ARCHIVE", archive.toString()));
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith(Version.PROGRAM + "\n")
        .contains(" Java     " + Runtime.version())
        .containsPattern("fine   rules    \\d{3} in .*, all sound\n")
        .contains("fine   cache    " + folder.resolve("cache/peakproof") + ", ")
        .contains("fine   archive  " + archive + ", 2.5 MB\n")
        .contains(" text     file names in ", ", 100 columns (no terminal)\n")
        .contains(" git      ")
        .contains("look   house    no house.yaml in this folder or above\n");
    assertThat(run.out().lines().filter(line -> line.matches("(fine|look|wrong) .*"))).hasSize(7);
  }

  @Test
  void saysWhatToDoWithoutACacheAndAnArchive() throws IOException {
    Path file = Files.writeString(folder.resolve("home"), "a file", StandardCharsets.UTF_8);
    Run refused = doctor(folder, Map.of("XDG_CACHE_HOME", file.toString()));
    assertThat(refused.out())
        .contains("look   cache    cannot write in " + file.resolve("peakproof") + "\n")
        .contains("or set XDG_CACHE_HOME to one")
        .contains("look   archive  not looked for\n");
    Run unnamed = doctor(folder, Map.of("XDG_CACHE_HOME", ""));
    assertThat(unnamed.out()).contains("look   cache    nothing says where\n");
    Run gone = doctor(folder, Map.of("PEAKPROOF_ARCHIVE", folder.resolve("none").toString()));
    assertThat(gone.out()).contains("look   archive  none of this Java's\n", "'peakproof warm'");
  }

  @Test
  void exitsWithFourWhereRulesAreMissingOrWrong() throws IOException {
    Run missing = doctor(folder, Map.of());
    assertThat(missing.code()).isEqualTo(4);
    assertThat(missing.out()).contains("wrong  rules    none at " + folder.resolve("rules") + "\n");
    Path own = Files.createDirectories(folder.resolve("own/run"));
    Files.writeString(own.resolve("mine.drl"), "rule", StandardCharsets.UTF_8);
    Run wrong = doctor(HERE, Map.of(), "--rules", own.getParent().toString());
    assertThat(wrong.code()).isEqualTo(4);
    assertThat(wrong.out()).contains("wrong  rules    ", ", and faults in others\n");
    assertThat(wrong.err()).contains("mine");
  }
}
