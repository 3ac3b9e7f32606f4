package peakproof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import peakproof.audit.Auditor;
import peakproof.audit.Trial;
import peakproof.rule.Case;
import peakproof.rule.RuleVariants;
import peakproof.rule.Ruleset;

/** Each condition of each rule, and each of its numbers, matters to one of its cases. */
class RuleConditionsTest {
  /** Two lines each: the variant, then why no plan could tell it from the rule. */
  private static final Path EXCUSED = Path.of("src/test/resources/peakproof/equivalent.txt");

  private static RuleVariants.All all;
  private static Set<String> surviving;

  @BeforeAll
  static void tryAll() {
    Ruleset shipped = Auditor.load(List.of(Path.of("rules"))).rules();
    all = RuleVariants.of(shipped);
    Map<String, List<RuleVariants.Variant>> byRule =
        all.variants().stream().collect(Collectors.groupingBy(RuleVariants.Variant::rule));
    surviving =
        byRule.entrySet().stream()
            .flatMap(entry -> surviving(shipped, entry.getKey(), entry.getValue()).stream())
            .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The variants of one rule that pass all its cases. */
  private static List<String> surviving(
      Ruleset shipped, String rule, List<RuleVariants.Variant> variants) {
    List<Trial> trials =
        shipped.cases().getOrDefault(rule, List.<Case>of()).stream()
            .map(each -> Trial.of(RuleVariants.alone(each), shipped))
            .toList();
    return variants.stream()
        .filter(variant -> trials.stream().allMatch(trial -> trial.passes(variant.rules())))
        .map(RuleVariants.Variant::name)
        .toList();
  }

  @Test
  void everyChangedConditionOrNumberFailsACase(TestReporter reporter) throws IOException {
    reporter.publishEntry(
        Map.of("tried", "" + all.variants().size(), "not built", "" + all.notBuilt().size()));
    Set<String> unexcused = new TreeSet<>(surviving);
    unexcused.removeAll(excuses().keySet());
    unexcused.removeIf(name -> name.endsWith(RuleVariants.UNCHANGED));
    assertThat(unexcused).isEmpty();
  }

  @Test
  void everyExcusedVariantStillPassesAllCases() throws IOException {
    Set<String> stale = new TreeSet<>(excuses().keySet());
    stale.removeAll(surviving);
    assertThat(stale).isEmpty();
    assertThat(excuses().values()).allMatch(reason -> reason.length() > 20);
  }

  @Test
  void everyUnchangedRulePassesItsCases() {
    assertThat(all.variants().stream().map(RuleVariants.Variant::name))
        .filteredOn(name -> name.endsWith(RuleVariants.UNCHANGED))
        .hasSizeGreaterThanOrEqualTo(52)
        .allMatch(surviving::contains);
  }

  @Test
  void onlyWhatAnotherPartNeedsCannotBeTakenAway() {
    assertThat(all.notBuilt()).isNotEmpty().allMatch(name -> name.contains(": without "));
  }

  private static Map<String, String> excuses() throws IOException {
    Map<String, String> excuses = new TreeMap<>();
    List<String> lines = Files.readAllLines(EXCUSED, StandardCharsets.UTF_8);
    for (int i = 0; i + 1 < lines.size(); i += 2) {
      excuses.put(lines.get(i).strip(), lines.get(i + 1).strip());
    }
    return excuses;
  }
}
