package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import peakproof.document.Documents;
import peakproof.fact.Standing;
import peakproof.measure.DistanceClass;

/** Whose numbers count for a plan. */
class PresetsTest {
  private static final String MOST = "boat-swims: {most: 6, because: two boats}";

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "STANDARD, true, true, true, short-course",
    "SPRINT, false, false, false, short-course",
    "FULL, true, true, false, first-timer",
    "FULL, false, true, true, masters",
    "HALF, false, false, true, experienced",
    "HALF, false, false, false, default",
    "FULL, , false, false, default",
    ", , false, false, default",
  })
  void givesAnAthleteTheFirstThatFits(
      DistanceClass distance,
      Boolean firstTimer,
      boolean masters,
      boolean experienced,
      String expected) {
    Standing who = new Standing(distance, null, masters, firstTimer, experienced);
    assertThat(Preset.of("by-athlete", who).word()).isEqualTo(expected);
    assertThat(Preset.of(null, who).word()).isEqualTo(expected);
    assertThat(Preset.of("masters", who)).isEqualTo(Preset.MASTERS);
    assertThat(Preset.of("default", who)).isEqualTo(Preset.DEFAULT);
  }

  @ParameterizedTest(name = "house {0}, plan {1}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "format: 1                                 | preset: masters | 6 | masters",
        "format: 1                                 |                 | 4 | experienced",
        "preset: masters                           |                 | 6 | masters",
        "preset: masters                           | preset: default | 4 | default",
        "preset: default                           | preset: masters | 6 | masters",
        "settings: {boat-swims: {most: 5}}         | preset: masters | 5 | masters",
        "preset: masters                           | settings: {boat-swims: {most: 3}} | 3 | masters",
        "settings: {measures: {masters-from: 38}}  | settings: {boat-swims: {most: 3}} | 3 | masters",
        "settings: {measures: {masters-from: 38}}  |                 | 6 | masters",
      })
  void goesBeforeTheCardAndAfterHouseAndPlan(
      String house, String plan, double most, String expected) throws IOException {
    Resolution resolved = resolve(house, plan == null ? "" : plan);
    assertThat(resolved.faults()).isEmpty();
    assertThat(resolved.preset().preset().word()).isEqualTo(expected);
    assertThat(Objects.requireNonNull(resolved.settings().get("boat-swims")).count("most"))
        .isEqualTo(most);
  }

  @Test
  void tellsWhatItChangesAndWhoChoseIt() throws IOException {
    Resolution byHouse = resolve("preset: masters", "");
    assertThat(byHouse.preset().because()).isEqualTo("the house says so");
    assertThat(byHouse.overrides())
        .containsExactly(new Resolution.Changed("preset", "boat-swims", "most 6", false));
    assertThat(resolve("preset: by-athlete", "").preset().because())
        .isEqualTo("several finished races of this distance");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "masters: {boat-swims: {most: 8, because: x}}  | 1:30: '8' is out of range for most",
        "masters: {boat-swims: {mots: 5, because: x}}  | 1:30: 'mots' is no setting of boat-swims",
        "masters: {boat-swims: {most: 50%, because: x}}| 1:30: '50%' does not fit the setting most",
        "masters: {boat-swims: {most: 5}}              | 1:23: 'because' is missing",
        "masters: {boat-swmis: {most: 5, because: x}}  | 1:23: there is no rule 'boat-swmis'",
        "elders: {boat-swims: {most: 5, because: x}}   | 1:1: 'elders' is not a key here",
        "masters: [boat-swims]                         | 1:10: 'masters' is no list of keys",
        "default: {boat-swims: {most: 5, because: x}}  | 1:1: 'default' is not a key here",
      })
  void refusesWhatNoCardHas(String presets, String fault) {
    RuleFiles files = RuleFiles.in(folder.resolve("rules")).with(RuleFiles.sound());
    files.put("presets.yaml", presets + "\n");
    assertThat(files.faults()).hasSize(1).first().asString().contains("presets.yaml:" + fault);
  }

  @Test
  void saysNothingOfARuleThatIsBrokenItself() {
    RuleFiles files = RuleFiles.in(folder.resolve("rules")).with(RuleFiles.sound());
    files.put("presets.yaml", "masters: {" + MOST + "}\n").put("swim/boat-swims.drl", "package\n");
    assertThat(files.faults()).isNotEmpty().noneMatch(fault -> fault.contains("presets.yaml"));
  }

  private Resolution resolve(String house, String plan) throws IOException {
    RuleFiles files = RuleFiles.in(folder.resolve("rules")).with(RuleFiles.sound());
    files.put("presets.yaml", "masters: {" + MOST + "}\n");
    Path base = files.root().resolve("base/plan.yaml");
    String text = Files.readString(base, StandardCharsets.UTF_8);
    Files.writeString(base, text.replace("  preset: default\n", "  " + plan + "\n"));
    Path written = folder.resolve("house.yaml");
    String first = house.startsWith("format") ? "" : "  format: 1\n";
    Files.writeString(written, "house:\n" + first + "  " + house + "\n", StandardCharsets.UTF_8);
    return Resolution.of(
        files.load(), Objects.requireNonNull(Documents.read(base, written).dossier()));
  }
}
