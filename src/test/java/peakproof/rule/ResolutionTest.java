package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Fault;

/** What a house turns on and off. */
class ResolutionTest {
  private static Ruleset rules;

  @TempDir private Path folder;

  @BeforeAll
  static void load() {
    rules = RuleFolder.load(List.of(Path.of("rules")));
  }

  @Test
  void leavesOutWhatIsOffByDefault() throws IOException {
    Resolution resolved = Resolution.of(rules, dossier("severity: {strength-none: ASK}"));
    assertThat(resolved.settings()).doesNotContainKey("ratio-unusual").containsKey("load-jump");
  }

  @Test
  void judgesWhatTheHouseAsksForAndSaysSo() throws IOException {
    Resolution resolved = Resolution.of(rules, dossier("use: [ratio-unusual, load-jump]"));
    assertThat(resolved.faults()).isEmpty();
    assertThat(resolved.settings()).containsKey("ratio-unusual");
    assertThat(resolved.overrides())
        .containsExactly(new Resolution.Changed("house", "ratio-unusual", "turned on", false));
  }

  @Test
  void silencesEvenWhatTheHouseAsksFor() throws IOException {
    String both =
        "use: [ratio-unusual]\n  silenced: [{rule: ratio-unusual, because: nobody reads it}]";
    assertThat(Resolution.of(rules, dossier(both)).settings()).doesNotContainKey("ratio-unusual");
  }

  @Test
  void namesTheNearestRuleForOneThereIsNot() throws IOException {
    Resolution resolved = Resolution.of(rules, dossier("use: [ratio-unusul]"));
    assertThat(resolved.faults())
        .extracting(Fault::what, Fault::instead)
        .containsExactly(tuple("there is no rule 'ratio-unusul'", "did you mean 'ratio-unusual'?"));
  }

  @Test
  void triesARuleThatIsOffByDefault() throws IOException {
    Dossier dossier = dossier("severity: {strength-none: ASK}");
    assertThat(Resolution.trying("ratio-unusual", rules, dossier).settings())
        .containsKey("ratio-unusual");
  }

  private Dossier dossier(String line) throws IOException {
    Path house = folder.resolve("house.yaml");
    Files.writeString(house, "house:\n  format: 1\n  " + line + "\n", StandardCharsets.UTF_8);
    return Objects.requireNonNull(Documents.read(Path.of("rules/base/plan.yaml"), house).dossier());
  }
}
