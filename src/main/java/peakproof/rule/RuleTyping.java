package peakproof.rule;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Settings;
import peakproof.rule.FieldType.Kind;

/**
 * Holds a rule against the facts and its card, before the engine sees it: the engine would pass
 * over some mistakes in silence and report others without a line.
 */
final class RuleTyping {
  private static final Pattern EQUALS =
      Pattern.compile("\\s*(rule|name)\\s*==\\s*\"([^\"]*)\"\\s*");

  /** Facts a rule asks for by name, of which it gets one. */
  private static final Set<String> NAMED = Set.of("Settings", "Window");

  private static final Pattern BINDING = Pattern.compile("\\s*(\\$\\w+)\\s*:");

  private final FactTypes facts;
  private final References card;
  private final RuleFaults faults;
  private final Map<String, FieldType> bound = new LinkedHashMap<>();
  private final Set<String> lost = new HashSet<>();
  private int number;

  private RuleTyping(FactTypes facts, References card, RuleFaults faults) {
    this.facts = facts;
    this.card = card;
    this.faults = faults;
  }

  /**
   * What a rule reports and reads.
   *
   * @param fact the reported fact, null when it is not known
   * @param because the fact that explains it, null without one
   * @param value true when a value is reported on which steps can rise
   * @param settings names of the card's settings it reads
   */
  record Result(
      @Nullable FactType fact, @Nullable FactType because, boolean value, Set<String> settings) {}

  static Result check(FactTypes facts, References card, RuleShape.Rule rule, RuleFaults faults) {
    RuleTyping typing = new RuleTyping(facts, card, faults);
    for (RuleShape.Condition condition : rule.conditions()) {
      Map<String, FieldType> before = new LinkedHashMap<>(typing.bound);
      boolean group = condition instanceof RuleShape.Group;
      List<RuleShape.Pattern> patterns = condition.patterns();
      for (int i = 0; i < patterns.size(); i++) {
        typing.pattern(
            patterns.get(i),
            group ? i > 0 : typing.number > 1,
            condition instanceof RuleShape.Group not && not.absent());
        typing.number += group || NAMED.contains(patterns.get(i).type()) ? 0 : 1;
      }
      if (group) {
        typing.bound.keySet().retainAll(before.keySet());
      }
    }
    return typing.result(rule);
  }

  /**
   * @param mustTie true from the third fact on, so that no product of everything with everything
   *     comes about; the first of a 'not' or 'exists' multiplies nothing and is free
   * @param absent true for a fact that must not be there
   */
  private void pattern(RuleShape.Pattern pattern, boolean mustTie, boolean absent) {
    FactType fact = facts.named(pattern.type());
    if (fact == null) {
      faults.add(
          pattern.offset(),
          "there is no fact '" + pattern.type() + "'",
          "a fact of docs/facts.md",
          Spelling.instead(pattern.type(), facts.all().keySet()));
      lose(pattern);
      return;
    }
    Scope scope = new Scope(fact, bound, lost, absent);
    ExpressionTyping typing = new ExpressionTyping(scope, card, faults);
    for (RuleShape.Piece piece : pattern.constraints()) {
      try {
        typing.condition(ExpressionParser.read(piece));
      } catch (ExpressionParser.Unreadable e) {
        faults.add(e.at, String.valueOf(e.getMessage()), e.expected, e.instead);
      }
    }
    if (NAMED.contains(fact.name())) {
      named(pattern, fact);
    } else if (mustTie && !scope.isTied()) {
      faults.add(
          pattern.offset(),
          "'" + fact.name() + "' is tied to nothing before it",
          "after the second, every fact is compared with a bound variable",
          "compare one of its fields with an earlier fact's, such as week == $week.starts");
    }
    bind(pattern, fact, scope);
  }

  private void lose(RuleShape.Pattern pattern) {
    if (pattern.variable() != null) {
      lost.add(pattern.variable());
    }
    for (RuleShape.Piece piece : pattern.constraints()) {
      Matcher binding = BINDING.matcher(piece.text());
      if (binding.lookingAt()) {
        lost.add(binding.group(1));
      }
    }
  }

  private void bind(RuleShape.Pattern pattern, FactType fact, Scope scope) {
    String variable = pattern.variable();
    if (variable != null) {
      if (scope.isBound(variable)) {
        faults.add(
            pattern.offset(),
            "'" + variable + "' is bound twice",
            "each variable once",
            "take another name");
      } else {
        bound.put(variable, new FieldType(fact.type(), Kind.FACT, true));
      }
    }
    bound.putAll(scope.own());
  }

  /** Settings and windows are taken by name, so that a rule can read no other rule's. */
  private void named(RuleShape.Pattern pattern, FactType fact) {
    Map<String, RuleShape.Piece> names = new LinkedHashMap<>();
    for (RuleShape.Piece piece : pattern.constraints()) {
      Matcher equals = EQUALS.matcher(piece.text());
      if (equals.matches()) {
        names.put(equals.group(1), new RuleShape.Piece(equals.group(2), piece.offset()));
      }
    }
    RuleShape.Piece rule = names.get("rule");
    if (rule == null || !rule.text().equals(card.rule())) {
      faults.add(
          rule == null ? pattern.offset() : rule.offset(),
          rule == null
              ? "'" + fact.name() + "' is not asked for by rule"
              : "the " + fact.placeholder() + " of '" + rule.text() + "' are another rule's",
          "a rule reads its own",
          "rule == \"" + card.rule() + "\"");
    }
    if (fact.name().equals("Window")) {
      RuleShape.Piece name = names.get("name");
      if (name == null) {
        faults.add(
            pattern.offset(),
            "'Window' is not asked for by name",
            "a window setting of the card",
            "name == \"window\"");
      } else {
        card.window(name.text(), name.offset(), faults);
      }
    }
  }

  private Result result(RuleShape.Rule rule) {
    List<String> names = Vetting.reported(rule);
    int at = rule.consequence().offset();
    FactType fact = null;
    FactType because = null;
    boolean value = false;
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      FieldType type = bound.get(name);
      if (type == null && lost.contains(name)) {
        continue;
      }
      if (type == null) {
        faults.add(
            at,
            "'" + name + "' is not bound",
            "a bound variable",
            Spelling.instead(name, bound.keySet()));
      } else if (i == 0) {
        settingsFirst(name, type, at);
      } else if (type.kind() == Kind.NUMBER && i == names.size() - 1 && i > 1) {
        value = value(name, type, at);
      } else {
        FactType reported = reported(name, type, at);
        fact = i == 1 ? reported : fact;
        because = i == 2 ? reported : because;
      }
    }
    return new Result(fact, because, value, card.read());
  }

  private void settingsFirst(String name, FieldType type, int at) {
    if (type.type() != Settings.class) {
      faults.add(
          at,
          "'" + name + "' is not the settings",
          "a report begins with the rule's settings",
          "findings.report($set, $fact);");
    }
  }

  private boolean value(String name, FieldType type, int at) {
    if (!type.known()) {
      faults.add(
          at,
          "'" + name + "' may be unknown here",
          "a reported value is always known",
          "write " + name + " != null where it is bound");
    }
    return true;
  }

  private @Nullable FactType reported(String name, FieldType type, int at) {
    FactType fact = type.fields();
    if (fact == null || !fact.canBeReported()) {
      faults.add(
          at,
          "'" + name + "' is " + type.kind().words() + " that cannot be reported",
          "a fact, one that explains it, and last a number",
          "findings.report($set, $fact, $because, $value);");
      return null;
    }
    return fact;
  }
}
