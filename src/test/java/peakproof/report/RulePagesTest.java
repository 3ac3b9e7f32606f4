package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.Golden;
import peakproof.audit.Auditor;
import peakproof.audit.CaseFindings;
import peakproof.audit.Finding;
import peakproof.audit.InForce;
import peakproof.rule.Card;
import peakproof.rule.Case;
import peakproof.rule.Case.Expectation;
import peakproof.rule.Preset;
import peakproof.rule.Presets;
import peakproof.rule.RuleInForce;
import peakproof.rule.Ruleset;

/**
 * The pages made of the rules, in {@code docs}: a stale one fails. {@code -Dgolden=update} makes
 * them anew.
 */
class RulePagesTest {
  private static final Path DOCS = Path.of("docs");
  private static final Path PAGES = DOCS.resolve("rules");
  private static Auditor auditor;
  private static Ruleset rules;
  private static List<RuleInForce> standing;

  @BeforeAll
  static void load() {
    auditor = Auditor.load(List.of(Path.of("rules")));
    rules = auditor.rules();
    standing = InForce.shipped(rules).all();
  }

  @Test
  void everyRuleHasItsPage() {
    for (RuleInForce rule : standing) {
      Case wrong = first(rule, Expectation.WRONG);
      Case fine = first(rule, Expectation.FINE);
      Finding found = CaseFindings.of(auditor, wrong);
      Golden.assertMatches(
          PAGES.resolve(rule.card().rule() + ".md"), RulePage.of(rule, wrong, found, fine));
    }
  }

  private static Case first(RuleInForce rule, Expectation expectation) {
    return Objects.requireNonNull(rules.cases().get(rule.card().rule())).stream()
        .filter(one -> one.expectation() == expectation)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void noPageIsOfARuleThatIsGone() throws IOException {
    Set<String> expected = new TreeSet<>(Set.of("README.md"));
    rules.cards().keySet().forEach(rule -> expected.add(rule + ".md"));
    try (Stream<Path> pages = Files.list(PAGES)) {
      assertThat(pages.map(page -> page.getFileName().toString()).toList())
          .containsExactlyInAnyOrderElementsOf(expected);
    }
  }

  @Test
  void theIndexNamesEveryRule() {
    StringBuilder page = new StringBuilder();
    page.append("# The rules\n\n")
        .append(standing.size())
        .append(
            " rules, by theme. `peakproof rules show RULE` shows one with its numbers as your club"
                + " has them,\n`peakproof why RULE PLAN` what it makes of a plan."
                + " [rules/README.md](../../rules/README.md) tells how to change them.\n");
    String theme = "";
    for (RuleInForce rule : standing) {
      Card card = rule.card();
      if (!card.theme().equals(theme)) {
        theme = card.theme();
        page.append("\n## ")
            .append(theme)
            .append("\n\n| rule | severity | what is wrong |\n|---|---|---|\n");
      }
      page.append("| [")
          .append(card.rule())
          .append("](")
          .append(card.rule())
          .append(".md) | ")
          .append(RuleWords.range(rule))
          .append(" | ")
          .append(card.title())
          .append(card.onByDefault() ? "" : " (off until a house asks for it)")
          .append(" |\n");
    }
    Golden.assertMatches(PAGES.resolve("README.md"), page.toString());
  }

  @Test
  void theHousePageHasEverySetting() {
    StringBuilder page = new StringBuilder();
    for (RuleInForce rule : standing) {
      if (!rule.settings().isEmpty()) {
        Card card = rule.card();
        page.append("\n### [")
            .append(card.rule())
            .append("](rules/")
            .append(card.rule())
            .append(".md)\n\n")
            .append(header());
        rule.settings()
            .forEach(setting -> page.append(RulePage.row(setting.shipped())).append('\n'));
      }
    }
    page.append("\n### measures\n\n").append(header());
    rules
        .measures()
        .settings()
        .values()
        .forEach(one -> page.append(RulePage.row(one)).append('\n'));
    Golden.assertMatches(
        DOCS.resolve("house.md"),
        "<!-- From here to the end marker this is made of the cards. -->",
        "<!-- end of what is made of the cards -->",
        page.toString().stripTrailing());
  }

  private static String header() {
    return "| setting | value | from | to | meaning |\n|---|---|---|---|---|\n";
  }

  @Test
  void theHousePageNamesSettingsThatThereAre() throws IOException {
    String page = Files.readString(DOCS.resolve("house.md"), StandardCharsets.UTF_8);
    String table =
        page.substring(page.indexOf("## Where coaches"), page.indexOf("## Every number"));
    List<MatchResult> named =
        Pattern.compile("`([a-z-]+): ([a-z-]+)`")
            .matcher(table.substring(table.indexOf("|---|")))
            .results()
            .toList();
    assertThat(named).hasSizeGreaterThan(50);
    for (MatchResult one : named) {
      Set<String> settings =
          one.group(1).equals("measures")
              ? rules.measures().settings().keySet()
              : rules.card(one.group(1)).settings().keySet();
      assertThat(settings).as(one.group()).contains(one.group(2));
    }
  }

  @Test
  void theHousePageHasEveryPreset() {
    StringBuilder page = new StringBuilder();
    for (Preset preset : Preset.values()) {
      if (preset != Preset.DEFAULT) {
        page.append("\n### ").append(preset.word()).append(": ").append(preset.because());
        page.append("\n\n| rule | setting | value | default | why |\n|---|---|---|---|---|\n");
        rules
            .presets()
            .of(preset)
            .forEach((rule, its) -> its.forEach((name, one) -> page.append(row(rule, name, one))));
      }
    }
    Golden.assertMatches(
        DOCS.resolve("house.md"),
        "<!-- From here to the end marker this is made of the presets. -->",
        "<!-- end of what is made of the presets -->",
        page.toString().stripTrailing());
  }

  private static String row(String rule, String name, Presets.Difference one) {
    Card.Setting shipped = Objects.requireNonNull(rules.card(rule).settings().get(name));
    return "| ["
        + rule
        + "](rules/"
        + rule
        + ".md) | `"
        + name
        + "` | "
        + one.text()
        + " | "
        + shipped.text()
        + " | "
        + one.because()
        + " |\n";
  }

  @Test
  void theHousePageExplainsEveryKeyOfAHouse() throws IOException {
    String page = Files.readString(DOCS.resolve("house.md"), StandardCharsets.UTF_8);
    String format = Files.readString(DOCS.resolve("format.md"), StandardCharsets.UTF_8);
    String keys = format.substring(format.indexOf("## House"), format.indexOf("## Time"));
    Set<String> named =
        keys.lines()
            .filter(line -> line.startsWith("| `"))
            .flatMap(line -> Stream.of(line.split("\\|")[1].split(",")))
            .map(key -> key.strip().replace("`", ""))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(named).hasSizeGreaterThan(8);
    assertThat(named).allSatisfy(key -> assertThat(page).contains("`" + key + "`"));
  }

  @Test
  void everyExampleOnTheHousePageLoads(@TempDir Path folder) throws IOException {
    String page = Files.readString(DOCS.resolve("house.md"), StandardCharsets.UTF_8);
    List<String> examples =
        Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL)
            .matcher(page)
            .results()
            .map(block -> block.group(1))
            .toList();
    assertThat(examples).hasSizeGreaterThan(7);
    for (String example : examples) {
      String house =
          example.startsWith("house:") ? example : "house:\n  format: 1\n" + example.indent(2);
      Files.createDirectories(folder.resolve("our-rules"));
      Path file = Files.writeString(folder.resolve("house.yaml"), house, StandardCharsets.UTF_8);
      assertThat(InForce.forHouse(auditor, Path.of("rules/base/plan.yaml"), file))
          .as(example)
          .isInstanceOf(InForce.Outcome.Known.class);
    }
  }
}
