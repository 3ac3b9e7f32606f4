package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import peakproof.Golden;
import peakproof.fact.Settings;

/**
 * The words for the facts name each of them and each field once, and the page made of them is not
 * stale. {@code -Dgolden=update} makes it anew.
 */
class FactsPageTest {
  private static Ruleset rules;

  @BeforeAll
  static void load() {
    rules = RuleFolder.load(List.of(Path.of("rules")));
  }

  @Test
  void everyFactAndFieldHasItsWords() {
    Map<String, FactType> types = new TreeMap<>(FactTypes.shipped().all());
    types.remove("Settings");
    Map<String, FactWords.Described> words = FactWords.shipped().all();
    assertThat(words.keySet()).isEqualTo(types.keySet());
    types.forEach(
        (name, type) ->
            assertThat(words.get(name).fields().keySet())
                .as(name)
                .containsExactlyInAnyOrderElementsOf(FactWords.useful(type)));
  }

  @Test
  void everyMeaningIsASentence() {
    FactWords.shipped()
        .all()
        .forEach(
            (name, fact) -> {
              assertThat(fact.meaning()).as(name).matches("[A-Z].*\\.");
              assertThat(fact.fields().values()).as(name).allMatch(m -> m.matches("[A-Z].{3,}\\."));
              assertThat(fact.one()).as(name).isNotBlank().isNotEqualTo(fact.many());
            });
  }

  @Test
  void thePageIsAsTheFactsAre() {
    Golden.assertMatches(Path.of("docs/facts.md"), FactsPage.of(rules));
  }

  @Test
  void everyExampleCanBeWritten() {
    FactTypes types = FactTypes.shipped();
    Map<String, String> examples = FactsPage.examples(rules);
    assertThat(examples).hasSizeGreaterThan(400);
    examples.forEach(
        (field, example) -> {
          FactType fact = types.named(field.substring(0, field.indexOf('.')));
          assertThat(faults(fact, example, types)).as(field).isEmpty();
        });
  }

  /** What is wrong with a condition but that no card has its setting. */
  private static List<String> faults(FactType fact, String condition, FactTypes types) {
    Map<String, FieldType> outer = new LinkedHashMap<>();
    outer.put("$set", new FieldType(Settings.class, FieldType.Kind.FACT, true));
    RuleFaults faults = new RuleFaults(new RuleText("example.drl", condition));
    Scope scope = new Scope(fact, outer, new HashSet<>(), false);
    References card = new References(rules.card("swim-open-water-weekly"), types);
    try {
      new ExpressionTyping(scope, card, faults)
          .condition(ExpressionParser.read(new RuleShape.Piece(condition, 0)));
    } catch (ExpressionParser.Unreadable e) {
      return List.of(String.valueOf(e.getMessage()));
    }
    return faults.all().stream()
        .map(fault -> fault.what())
        .filter(what -> !what.startsWith("the card has no setting"))
        .toList();
  }
}
