package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.fact.Settings;

/** Holds a card's texts and settings against the rule: what it names is there, and is used. */
final class CardUse {
  /** Facts there is one each of, which every text may name. */
  private static final Set<String> SINGLE =
      Set.of("race", "athlete", "goal", "raceDay", "block", "readiness");

  private final Card card;
  private final RuleTyping.Result rule;
  private final FactTypes facts;
  private final Place place;
  private final List<Fault> faults = new ArrayList<>();
  private final Set<String> used = new TreeSet<>();

  private CardUse(Card card, RuleTyping.Result rule, FactTypes facts, Place place) {
    this.card = card;
    this.rule = rule;
    this.facts = facts;
    this.place = place;
  }

  static List<Fault> faults(Card card, RuleTyping.Result rule, FactTypes facts, Place place) {
    CardUse use = new CardUse(card, rule, facts, place);
    Stream.of(card.why(), card.remedy(), card.care())
        .filter(text -> text != null)
        .flatMap(text -> text.placeholders().stream())
        .forEach(use::placeholder);
    card.steps().forEach(use::step);
    use.unused();
    return use.faults;
  }

  private Map<String, FactType> named() {
    Map<String, FactType> named = new TreeMap<>();
    SINGLE.forEach(name -> add(named, facts.placeholder(name)));
    add(named, rule.fact());
    add(named, rule.because());
    return named;
  }

  private static void add(Map<String, FactType> named, @Nullable FactType fact) {
    if (fact != null) {
      named.put(fact.placeholder(), fact);
    }
  }

  private void placeholder(String name) {
    int dot = name.indexOf('.');
    if (name.equals("value")) {
      if (!rule.value()) {
        fault("'{value}' is not reported", "a value in findings.report(…)", "name a field instead");
      }
    } else if (dot < 0) {
      used.add(name);
      if (!card.settings().containsKey(name)) {
        fault(
            "'{" + name + "}' is no setting of the card",
            "a setting, or a field such as {week.label}",
            Spelling.instead(name, card.settings().keySet()));
      }
    } else {
      field(name, named().get(name.substring(0, dot)), name.substring(dot + 1));
    }
  }

  private void field(String name, @Nullable FactType fact, String field) {
    if (fact == null) {
      fault(
          "'{" + name + "}' names a fact the rule does not report",
          "one of: " + String.join(", ", named().keySet()),
          Spelling.instead(name.substring(0, name.indexOf('.')), named().keySet()));
    } else if (!fact.fields().containsKey(field)) {
      fault(
          "'{" + name + "}' is no field",
          "a field of " + fact.name(),
          Spelling.instead(field, fact.fields().keySet()));
    }
  }

  private void step(Card.Step step) {
    if (step.from() != null && !rule.value()) {
      fault("a step has 'from', but the rule reports no value", "a value", "use 'when: FIELD'");
    }
    FactType fact = rule.fact();
    String when = step.when();
    if (when != null && fact != null) {
      FieldType field = fact.fields().get(when);
      if (field == null || field.kind() != FieldType.Kind.TRUTH) {
        fault(
            "'when: " + when + "' is no yes/no field of " + fact.name(),
            "a yes/no field of the reported fact",
            Spelling.instead(when, fact.fields().keySet()));
      }
    }
  }

  private void unused() {
    used.addAll(rule.settings());
    card.settings()
        .forEach(
            (name, setting) -> {
              if (!used.contains(name) && setting.value().kind() != Settings.Kind.WINDOW) {
                fault(
                    "the setting '" + name + "' is not used",
                    "each setting does something",
                    "take it out, or read it in the rule");
              }
            });
  }

  private void fault(String what, String expected, String instead) {
    faults.add(new Fault(place, what, expected, instead));
  }
}
