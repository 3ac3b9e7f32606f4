package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Where nothing can be written, everything but the speed is the same. Permissions do not bind every
 * user a test may run as, so the folders are ones nobody can write in: a file in a folder's place,
 * and the system's view of its processes.
 */
class UnwritableTest {
  private static final Path NOBODYS = Path.of("/proc");
  private static final String PLAN = Path.of("plans/mateus/plan.yaml").toAbsolutePath().toString();

  @TempDir private Path folder;

  @Test
  void auditsTheSameWithAHomeThatIsAFile() throws IOException {
    Path home = Files.writeString(folder.resolve("home"), "a file", StandardCharsets.UTF_8);
    Surroundings unwritable =
        new Surroundings(
            Path.of("").toAbsolutePath(),
            Run.CLOCK,
            false,
            false,
            Map.of("HOME", home.toString(), "XDG_CACHE_HOME", home + "/cache"));
    Run audit = Run.in(unwritable, "audit", PLAN);
    assertThat(audit).isEqualTo(Run.of("audit", PLAN, "--no-cache"));
    assertThat(audit.code()).isEqualTo(1);
  }

  @Test
  void worksInAFolderNobodyCanWriteIn() throws IOException, InterruptedException {
    assumeTrue(Files.isDirectory(NOBODYS.resolve("self")), "this system shows no processes");
    Map<String, String> unwritable =
        Map.of("HOME", NOBODYS.toString(), "XDG_CACHE_HOME", NOBODYS.resolve("cache").toString());
    Child audit = Child.run(folder, NOBODYS, unwritable, "audit", PLAN);
    assertThat(audit.err()).isEmpty();
    assertThat(audit.code()).isEqualTo(1);
    assertThat(audit.out()).contains("HOLD ").contains("run-pain-rule");
    Child doctor = Child.run(folder, NOBODYS, unwritable, "doctor");
    assertThat(doctor.code()).as(doctor.err()).isZero();
    assertThat(doctor.out())
        .contains("look   cache    cannot write in /proc/cache/peakproof\n")
        .containsPattern("fine   rules    \\d+ in .*rules, all sound\n");
  }
}
