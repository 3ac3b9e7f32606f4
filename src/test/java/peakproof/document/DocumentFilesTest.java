package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DocumentFilesTest {
  private static final String PLAN =
      Texts.PLAN.replace("event.yaml", "../events/saltmarsh.yaml") + "  weeks: []\n";
  private static final String LOG = "log:\n  format: 1\n  days: {2027-05-30: rest}\n";

  @TempDir Path club;

  private Path write(String file, String text) throws IOException {
    Path path = club.resolve(file);
    Files.createDirectories(Objects.requireNonNull(path.getParent()));
    return Files.writeString(path, text);
  }

  private List<String> faults(Path plan) {
    return Documents.read(plan, null).faults().stream()
        .map(fault -> fault.toString().replace(DocumentFiles.name(club) + "/", ""))
        .toList();
  }

  @Test
  void findsEventLogAndTheNearestHouse() throws IOException {
    Path plan = write("tove/plan.yaml", PLAN);
    write("events/saltmarsh.yaml", Texts.EVENT);
    write("tove/log.yaml", LOG);
    write("house.yaml", "house: {format: 1, name: Tidemill Tri}\n");
    Dossier dossier = Objects.requireNonNull(Documents.read(plan, null).dossier());
    assertThat(dossier.logFile()).isEqualTo(club.resolve("tove/log.yaml"));
    assertThat(dossier.houseFile()).isEqualTo(club.resolve("house.yaml"));
    assertThat(dossier.positions().of("/event/name").file())
        .isEqualTo(DocumentFiles.name(club.resolve("events/saltmarsh.yaml")));
    Path other = write("other-house.yaml", "house: {format: 1, name: Mirror}\n");
    Dossier overridden = Objects.requireNonNull(Documents.read(plan, other).dossier());
    assertThat(Objects.requireNonNull(overridden.house()).name()).isEqualTo("Mirror");
  }

  @Test
  void readsTheLogThatThePlanNames() throws IOException {
    write("events/saltmarsh.yaml", Texts.EVENT);
    Path plan = write("tove/plan.yaml", PLAN + "  log: spring.yaml\n");
    write("tove/log.yaml", "log: broken\n");
    write("tove/spring.yaml", LOG);
    assertThat(Objects.requireNonNull(Documents.read(plan, null).dossier()).logFile())
        .isEqualTo(club.resolve("tove/spring.yaml"));
  }

  @Test
  void saysWhichFileIsMissing() throws IOException {
    Path plan = write("tove/plan.yaml", PLAN + "  log: sprng.yaml\n");
    write("tove/spring.yaml", LOG);
    assertThat(faults(plan))
        .containsExactly(
            "tove/plan.yaml:4:10: there is no file 'events/saltmarsh.yaml'; expected a path that begins in the folder of the plan; check the path",
            "tove/plan.yaml:6:8: there is no file 'tove/sprng.yaml'; expected a path that begins in the folder of the plan; check the path: did you mean 'spring.yaml'?");
    assertThat(faults(club.resolve("tove/paln.yaml")))
        .containsExactly(
            "tove/paln.yaml:1:1: there is no such file; expected a YAML file; check the path: did you mean 'plan.yaml'?");
    assertThat(faults(club)).hasSize(1);
  }

  @Test
  void tellsTheFaultsOfAllFilesTogether() throws IOException {
    Path plan = write("tove/plan.yaml", PLAN + "  gaol: {}\n");
    write("events/saltmarsh.yaml", Texts.EVENT + "  bik: {}\n");
    write("tove/log.yaml", "log: {format: 1, days: {2027-05-30: rset}}\n");
    write("house.yaml", "huose: {format: 1}\n");
    assertThat(faults(plan))
        .extracting(fault -> fault.substring(0, fault.indexOf(':')))
        .containsExactly("events/saltmarsh.yaml", "house.yaml", "tove/log.yaml", "tove/plan.yaml");
  }

  @Test
  void tellsTheWrongKindOfFile() throws IOException {
    assertThat(faults(write("log.yaml", LOG)))
        .containsExactly(
            "log.yaml:1:1: this is a file of kind 'log'; expected 'plan:' as its first key; name the file that begins with 'plan:'");
  }

  @Test
  void findsPlansInFolders() throws IOException {
    write("b/plan.yaml", "# mine\n\n---\nplan: {broken\n");
    write("a/summer.yml", "{plan: {}}\n");
    write("a/log.yaml", LOG);
    write("a/plan.txt", "plan:\n");
    write("a/planner.yaml", "planner:\n");
    write(".hidden/plan.yaml", "plan:\n");
    write("c/plan.yaml/readme.md", "");
    Files.createSymbolicLink(club.resolve("b/round"), club);
    assertThat(Documents.plansUnder(club))
        .containsExactly(club.resolve("a/summer.yml"), club.resolve("b/plan.yaml"));
    assertThat(Documents.plansUnder(club.resolve("a/log.yaml")))
        .containsExactly(club.resolve("a/log.yaml"));
    assertThat(Documents.plansUnder(Path.of("rules/base")))
        .containsExactly(Path.of("rules/base/plan.yaml"));
    assertThat(Documents.plansUnder(Path.of("./rules/base")))
        .containsExactly(Path.of("rules/base/plan.yaml"));
  }
}
