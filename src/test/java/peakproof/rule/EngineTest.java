package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What the one class that touches the engine's inside relies on. When one of these fails after the
 * engine changed, that class and the vetting of what it makes have to be looked at again.
 */
class EngineTest {
  private static final String TEXT = Objects.requireNonNull(RuleFiles.sound().get(".drl"));

  @Test
  void makesEveryClassInThePackageOfItsRule() throws Engine.Unreadable {
    Engine.Built built = build("boat-swims");
    assertThat(built.models()).hasSize(1);
    assertThat(built.models().get(0))
        .matches("peakproof\\.rules\\.rule_boat_swims\\.Rules[0-9A-F]{32}");
    assertThat(shapes(built))
        .containsOnlyKeys(
            "Rules#",
            "Rules#RuleMethods0",
            "DomainClassesMetadata#",
            "DomainClassesMetadata#$peakproof_fact_Findings_Metadata",
            "DomainClassesMetadata#$peakproof_fact_Settings_Metadata",
            "DomainClassesMetadata#$peakproof_fact_Week_Metadata",
            "P#.LambdaPredicate#",
            "P#.LambdaExtractor#",
            "P#.LambdaConsequence#");
  }

  @Test
  void keepsTheClassesOfTwoRulesApart() throws Engine.Unreadable {
    Map<String, Engine.Parsed> two = new TreeMap<>();
    two.put("boat-one", Engine.parse(TEXT));
    two.put("boat-two", Engine.parse(TEXT));
    Engine.Built built = Objects.requireNonNull(Engine.build(two, List.of()));
    assertThat(built.models()).hasSize(2);
    assertThat(built.classes().keySet())
        .allMatch(
            name ->
                name.startsWith("peakproof.rules.rule_boat_one.")
                    || name.startsWith("peakproof.rules.rule_boat_two."));
    VettedClasses vetted = new VettedClasses(() -> AllowedMembers.of(FactTypes.shipped()));
    assertThat(vetted.add("boat-one", built, false)).isEmpty();
    assertThat(vetted.add("boat-two", built, false)).isEmpty();
    assertThat(vetted.classes()).hasSameSizeAs(built.classes());
    assertThat(Engine.load(vetted).getKiePackages())
        .extracting(each -> each.getName())
        .contains("peakproof.rules.rule_boat_one", "peakproof.rules.rule_boat_two");
  }

  @Test
  void knowsWhoseClassItIs() throws Engine.Unreadable {
    assertThat(build("boat-swims").classes().keySet())
        .isNotEmpty()
        .allMatch(name -> "boat-swims".equals(Engine.ruleOf(name)));
    assertThat(Engine.ruleOf("peakproof.rule.Engine")).isNull();
    assertThat(Engine.ruleOf("peakproof.rules.swim.Other")).isNull();
  }

  @Test
  void makesTheSameClassesTwice() throws Engine.Unreadable {
    assertThat(build("boat-swims").classes().keySet())
        .isEqualTo(build("boat-swims").classes().keySet());
  }

  @Test
  void givesNothingWhereTheEngineFails() throws Engine.Unreadable {
    String text = TEXT.replace("swims > ", "swims > \"abc\", swims > ");
    assertThat(Engine.build(Map.of("boat-swims", Engine.parse(text)), List.of())).isNull();
    String call = TEXT.replace("findings.report", "findings.reports");
    assertThat(Engine.build(Map.of("boat-swims", Engine.parse(call)), List.of())).isNull();
    String field = TEXT.replace("changeable", "changeabel");
    assertThat(Engine.build(Map.of("boat-swims", Engine.parse(field)), List.of())).isNull();
  }

  private static Engine.Built build(String slug) throws Engine.Unreadable {
    return Objects.requireNonNull(Engine.build(Map.of(slug, Engine.parse(TEXT)), List.of()));
  }

  /** Names of classes below the rule's package, with the hashes taken out. */
  private static Map<String, byte[]> shapes(Engine.Built built) {
    Map<String, byte[]> shapes = new TreeMap<>();
    built
        .classes()
        .forEach(
            (name, bytes) ->
                shapes.put(
                    Pattern.compile(
                            "(?<=^|Rules|Metadata|Predicate|Extractor|Consequence)[0-9A-F]{32}|(?<=^P)[0-9A-F]{2}")
                        .matcher(name.substring("peakproof.rules.rule_boat_swims.".length()))
                        .replaceAll("#"),
                    bytes));
    return shapes;
  }
}
