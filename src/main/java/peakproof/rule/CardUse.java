package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Nearest;
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
  private final Map<String, Place> places;
  private final List<Fault> faults = new ArrayList<>();
  private final Set<String> used = new TreeSet<>();

  private CardUse(Card card, RuleTyping.Result rule, FactTypes facts, Map<String, Place> places) {
    this.card = card;
    this.rule = rule;
    this.facts = facts;
    this.places = places;
  }

  /** What does not fit; {@code places} are those of the card's entries. */
  static List<Fault> faults(
      Card card, RuleTyping.Result rule, FactTypes facts, Map<String, Place> places) {
    CardUse use = new CardUse(card, rule, facts, places);
    use.text("why", card.why());
    use.text("do", card.remedy());
    use.text("care", card.care());
    card.steps().forEach(use::step);
    use.unused();
    return use.faults;
  }

  private void text(String key, @Nullable Template text) {
    if (text != null) {
      text.placeholders().forEach(name -> placeholder(key, name));
    }
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

  private void placeholder(String key, String name) {
    int dot = name.indexOf('.');
    if (name.equals("value")) {
      if (!rule.value()) {
        fault(
            key,
            "'{value}' is not reported",
            "a value in findings.report(…)",
            "name a field instead");
      }
    } else if (dot < 0) {
      used.add(name);
      if (!card.settings().containsKey(name)) {
        fault(
            key,
            "'{" + name + "}' is no setting of the card",
            "a setting, or a field such as {week.label}",
            Spelling.instead(name, card.settings().keySet()));
      }
    } else {
      field(key, name, named().get(name.substring(0, dot)), name.substring(dot + 1));
    }
  }

  private void field(String key, String name, @Nullable FactType fact, String field) {
    if (fact == null) {
      fault(
          key,
          "'{" + name + "}' names a fact the rule does not report",
          "one of: " + String.join(", ", named().keySet()),
          Nearest.advice(
              name.substring(0, name.indexOf('.')), named().keySet(), "take one of these"));
    } else if (!fact.fields().containsKey(field)) {
      fault(
          key,
          "'{" + name + "}' is no field",
          "a field of " + fact.name(),
          Spelling.instead(field, fact.fields().keySet()));
    }
  }

  private void step(Card.Step step) {
    if (step.from() != null && !rule.value()) {
      fault(
          "steps",
          "a step has 'from', but the rule reports no value",
          "a value in findings.report(…)",
          "use 'when: FIELD'");
    }
    FactType fact = rule.fact();
    String when = step.when();
    if (when != null && fact != null) {
      FieldType field = fact.fields().get(when);
      if (field == null || field.kind() != FieldType.Kind.TRUTH) {
        fault(
            "steps",
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
                    CardSettings.PLACE + name,
                    "the setting '" + name + "' is not used",
                    "each setting does something",
                    "take it out, or read it in the rule");
              }
            });
  }

  private void fault(String key, String what, String expected, String instead) {
    faults.add(new Fault(Objects.requireNonNull(places.get(key)), what, expected, instead));
  }
}
