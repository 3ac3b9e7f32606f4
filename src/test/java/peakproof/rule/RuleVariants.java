package peakproof.rule;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
  private final List<Variant> variants = new ArrayList<>();
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

  /** A changed text that the rule's card admits. */
  private record Made(Card card, String what, Engine.Parsed parsed, RuleShape.Rule shape) {}

  /** Changes every rule in every way. */
  public static All of(Ruleset shipped) {
    return new RuleVariants(shipped).all();
  }

  private All all() {
    for (Card card : shipped.cards().values()) {
      Path file = Path.of(shipped.origin().get(card.rule()) + ".drl");
      String text = new String(RuleListing.bytes(file), StandardCharsets.UTF_8);
      ConditionVariants.of(parse(text).shape())
          .forEach((what, changed) -> make(card, what, parse(changed)));
    }
    Map<String, Engine.Parsed> parsed = new TreeMap<>();
    made.forEach((key, each) -> parsed.put(key, each.parsed()));
    Engine.Built built = Objects.requireNonNull(Engine.build(parsed, facts.wordLists().values()));
    made.forEach((key, each) -> load(key, each, built));
    return new All(variants, notBuilt);
  }

  private void make(Card card, String what, Engine.Parsed parsed) {
    RuleShape.Rule shape = parsed.shape().rules().get(0);
    if (admits(card, shape)) {
      made.put(card.rule() + "-v" + made.size(), new Made(card, what, parsed, shape));
    } else {
      notBuilt.add(card.rule() + ": " + what);
    }
  }

  private boolean admits(Card card, RuleShape.Rule shape) {
    RuleFaults faults = new RuleFaults(new RuleText(card.rule(), ""));
    RuleTyping.check(facts, new References(card, facts), shape, faults);
    return faults.all().isEmpty();
  }

  private void load(String key, Made each, Engine.Built built) {
    VettedClasses vetted = new VettedClasses(() -> AllowedMembers.of(facts));
    if (!vetted.add(key, built, false).isEmpty()) {
      throw new IllegalStateException(each.what());
    }
    KieBase knowledge = Engine.load(vetted);
    add(each.card(), each.what(), knowledge);
    if (each.what().equals(UNCHANGED)) {
      Map<String, Card> cards = new TreeMap<>(SettingVariants.of(each.card()));
      cards.putAll(AdmissionVariants.of(each.card()));
      cards.forEach(
          (what, card) -> {
            if (admits(card, each.shape())) {
              add(card, what, knowledge);
            } else {
              notBuilt.add(card.rule() + ": " + what);
            }
          });
    }
  }

  private void add(Card card, String what, KieBase knowledge) {
    variants.add(new Variant(card.rule(), what, rules(card, knowledge)));
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
        () -> knowledge,
        shipped.origin(),
        shipped.measures(),
        shipped.waterTable(),
        shipped.presets(),
        shipped.cautions(),
        Map.of(),
        shipped.ofHealth(),
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
