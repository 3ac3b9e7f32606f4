package peakproof.rule;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
import peakproof.document.Fault;
import peakproof.document.WaterTable;

/**
 * The sound rules of some folders, ready to run, and what is wrong with the others.
 *
 * @param cards by slug; only of rules that can run
 * @param formerNames slugs by their former names
 * @param knowledge what the engine makes of the rules, once it is made
 * @param origin the files of every rule there is, sound or not, without their endings
 * @param measures the settings of {@code measures.yaml}
 * @param waterTable the rule books' water temperatures, as {@code water-temperature.yaml} has them
 * @param presets what {@code presets.yaml} changes for whom
 * @param cautions what is said once of each declared condition, as {@code cautions.yaml} has it
 * @param cases what the cases beside the rules ask for, by slug
 * @param ofHealth slugs of rules that find something in health entries
 */
public record Ruleset(
    Map<String, Card> cards,
    Map<String, String> formerNames,
    Supplier<KieBase> knowledge,
    Map<String, Path> origin,
    MeasureSettings measures,
    WaterTable waterTable,
    Presets presets,
    Map<String, String> cautions,
    Map<String, List<Case>> cases,
    Set<String> ofHealth,
    List<Fault> faults) {

  /** The card of a rule that can run. */
  public Card card(String rule) {
    return Objects.requireNonNull(cards.get(rule), rule);
  }

  /** The slug for a name a document uses, which may be a former one; null when there is none. */
  public @Nullable String slug(String name) {
    return cards.containsKey(name) ? name : formerNames.get(name);
  }

  /** True when a rule lies in a folder, by whatever way the folder is named. */
  public boolean isIn(String rule, Path folder) {
    Path stem = origin.get(rule);
    Path theme = stem == null ? null : stem.getParent();
    try {
      return theme != null && theme.toRealPath().startsWith(folder.toRealPath());
    } catch (IOException gone) {
      return false;
    }
  }

  /** The rule that the engine made a class of; null when it made it of none. */
  public static @Nullable String ruleOfClass(String className) {
    return Engine.ruleOf(className);
  }

  /** A fault of a whole rule; of all of them when it is null. */
  public Fault fault(@Nullable String rule, String what, String expected, String instead) {
    Path stem = rule == null ? null : origin.get(rule);
    Path file = stem == null ? Path.of("rules") : Path.of(stem + RuleListing.LOGIC);
    return new Fault(RuleListing.place(file), what, expected, instead);
  }

  Collection<String> names() {
    return cards.keySet();
  }
}
