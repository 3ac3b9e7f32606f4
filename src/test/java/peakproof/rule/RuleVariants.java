package peakproof.rule;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.kie.api.KieBase;
import peakproof.document.Fault;
import peakproof.document.Place;

/**
 * Every shipped rule with one thing changed, each alone in a rule base of its own. All are built in
 * one go, which takes seconds where one at a time takes minutes.
 */
public final class RuleVariants {
  /** What was done to a rule that is as it was. */
  public static final String UNCHANGED = "unchanged";

  private final Ruleset shipped;
  private final FactTypes facts = FactTypes.shipped();
  private final Map<String, Made> made = new TreeMap<>();
  private final List<String> notBuilt = new ArrayList<>();

  private RuleVariants(Ruleset shipped) {
    this.shipped = shipped;
  }

  /**
   * A changed rule.
   *
   * @param what what was done to it
   * @param rules a set with this rule only
   */
  public record Variant(String rule, String what, Ruleset rules) {
    /** The rule and what was done to it. */
    public String name() {
      return rule + ": " + what;
    }
  }

  /** The variants, and those that say nothing a rule can say. */
  public record All(List<Variant> variants, List<String> notBuilt) {}

  private record Made(String rule, String what, String text) {}

  /** Changes every rule in every way. */
  public static All of(Ruleset shipped) {
    return new RuleVariants(shipped).all();
  }

  private All all() {
    Map<String, Engine.Parsed> parsed = new TreeMap<>();
    for (String rule : shipped.cards().keySet()) {
      Path file = Path.of(shipped.origin().get(rule) + ".drl");
      String text = new String(RuleFolder.bytes(file), StandardCharsets.UTF_8);
      ConditionVariants.of(parse(text).shape())
          .forEach((what, changed) -> keep(new Made(rule, what, changed), parsed));
    }
    Engine.Built built = build(parsed);
    List<Variant> variants = new ArrayList<>();
    made.forEach(
        (key, each) -> {
          String start = Engine.GENERATED + key.replace('-', '_') + ".";
          List<String> models =
              built.models().stream().filter(model -> model.startsWith(start)).toList();
          KieBase knowledge = Engine.load(built.classes(), models);
          Card card = shipped.card(each.rule());
          variants.add(new Variant(each.rule(), each.what(), rules(card, knowledge)));
          if (each.what().equals(UNCHANGED)) {
            SettingVariants.of(card)
                .forEach(
                    (what, changed) ->
                        variants.add(new Variant(each.rule(), what, rules(changed, knowledge))));
          }
        });
    return new All(variants, notBuilt);
  }

  private void keep(Made each, Map<String, Engine.Parsed> parsed) {
    RuleFaults faults = new RuleFaults(new RuleText(each.rule(), each.text()));
    try {
      Engine.Parsed file = Engine.parse(each.text());
      RuleShape.Rule rule = file.shape().rules().get(0);
      RuleTyping.check(facts, new References(shipped.card(each.rule()), facts), rule, faults);
      if (faults.all().isEmpty()) {
        String key = each.rule() + "-v" + made.size();
        made.put(key, each);
        parsed.put(key, file);
        return;
      }
    } catch (Engine.Unreadable e) {
      // counted below like any other that says nothing
    }
    notBuilt.add(each.rule() + ": " + each.what());
  }

  private Engine.Built build(Map<String, Engine.Parsed> parsed) {
    Engine.Built built = Engine.build(parsed, facts.wordLists().values());
    if (built.troubles().isEmpty()) {
      return built;
    }
    throw new IllegalStateException(built.troubles().toString());
  }

  private static Engine.Parsed parse(String text) {
    try {
      return Engine.parse(text);
    } catch (Engine.Unreadable e) {
      throw new IllegalStateException(e);
    }
  }

  /** Cases may set other rules' numbers, which a set passes over when it has a fault to tell. */
  private Ruleset rules(Card card, KieBase knowledge) {
    return new Ruleset(
        Map.of(card.rule(), card),
        Map.of(),
        knowledge,
        shipped.origin(),
        shipped.measures(),
        Map.of(),
        List.of(new Fault(new Place(card.rule(), 1, 1), "alone", "all rules", "load the folder")));
  }

  /** A case that asks for its own rule only. */
  public static Case alone(Case each) {
    Map<String, Severity> finds = new TreeMap<>(each.finds());
    finds.keySet().removeIf(rule -> !rule.equals(each.rule()));
    Set<String> unsure = new TreeSet<>(each.unsure());
    unsure.removeIf(rule -> !rule.equals(each.rule()));
    return new Case(
        each.rule(),
        each.name(),
        each.place(),
        each.expectation(),
        each.asOf(),
        each.plan(),
        each.event(),
        each.log(),
        finds,
        unsure);
  }
}
