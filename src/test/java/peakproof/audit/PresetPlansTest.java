package peakproof.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * For each preset a plan that nothing is found in: else its rules would squeeze each other, and no
 * plan could please them all.
 */
class PresetPlansTest {
  private static final Path CORPUS = Path.of("src/test/resources/peakproof/corpus");

  @TempDir private Path folder;

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      nullValues = "-",
      value = {
        "default,      rules/base, -,                    -",
        "experienced,  rules/base, '  preset: default\n', ''",
        "first-timer,  rules/base, '  preset: default\n', '  preset: first-timer\n'",
        "masters,      masters,    -,                    -",
        "short-course, standard,   -,                    -",
      })
  void leaveRoomForASoundPlan(String preset, Path name, @Nullable String from, @Nullable String to)
      throws IOException {
    Path plan = copy(name.startsWith("rules") ? name : CORPUS.resolve(name));
    if (from != null && to != null) {
      String text = Files.readString(plan, StandardCharsets.UTF_8);
      assertThat(text).contains(from);
      Files.writeString(plan, text.replace(from, to));
    }
    Auditor.Outcome outcome =
        Shipped.auditor().audit(plan, new Auditor.Options(LocalDate.parse("2027-05-30"), null));
    Audit audit = ((Auditor.Outcome.Judged) outcome).audit();
    assertThat(audit.preset().preset().word()).isEqualTo(preset);
    assertThat(audit.findings())
        .extracting(one -> one.severity() + " " + one.rule() + ": " + one.why())
        .isEmpty();
    assertThat(audit.clear()).hasSizeGreaterThan(90);
  }

  private Path copy(Path from) throws IOException {
    for (String name : new String[] {"plan.yaml", "event.yaml", "log.yaml"}) {
      Files.copy(from.resolve(name), folder.resolve(name));
    }
    return folder.resolve("plan.yaml");
  }
}
