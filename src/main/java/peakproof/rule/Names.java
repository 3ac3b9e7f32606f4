package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Settings;
import peakproof.rule.FieldType.Kind;

/** Finds out what the names in a condition stand for; each gives null after telling a fault. */
final class Names {
  private final Scope scope;
  private final References card;
  private final RuleFaults faults;

  Names(Scope scope, References card, RuleFaults faults) {
    this.scope = scope;
    this.card = card;
    this.faults = faults;
  }

  @Nullable FieldType field(Expression.Field field) {
    if (field.path().get(0).equals("this")) {
      FieldType self = new FieldType(scope.fact().type(), Kind.FACT, true);
      return field.path().size() == 1
          ? self
          : path(scope.fact(), "this", field.path().subList(1, field.path().size()), field.at());
    }
    return path(scope.fact(), "", field.path(), field.at());
  }

  @Nullable FieldType variable(Expression.Variable variable) {
    FieldType type = scope.use(variable.name());
    if (type == null && scope.isLost(variable.name())) {
      return null;
    }
    if (type == null) {
      faults.add(
          variable.at(),
          "'" + variable.name() + "' is not bound",
          "a variable of an earlier fact, or of a field before it",
          Spelling.instead(variable.name(), scope.variables()));
      return null;
    }
    type = sure(variable.name(), type);
    if (variable.path().isEmpty()) {
      if (!type.known() && scope.needsKnown(variable.name())) {
        mayBeUnknown(variable.name(), variable.at());
        return null;
      }
      return type;
    }
    FactType fact = type.fields();
    if (fact == null) {
      faults.add(
          variable.at(),
          "'" + variable.name() + "' is " + type.kind().words() + " and has no fields",
          "a fact has fields",
          "write " + variable.name());
      return null;
    }
    if (!type.known()) {
      mayBeUnknown(variable.name(), variable.at());
      return null;
    }
    return path(fact, variable.name(), variable.path(), variable.at());
  }

  /** Follows fields from a fact; {@code walked} is how the fact itself is written. */
  private @Nullable FieldType path(FactType from, String walked, List<String> names, int at) {
    FactType fact = from;
    String so = walked;
    FieldType type = null;
    for (String name : names) {
      if (fact == null) {
        faults.add(at, "'" + so + "' has no fields", "a fact has fields", "write " + so);
        return null;
      }
      if (type != null && !type.known()) {
        mayBeUnknown(so, at);
        return null;
      }
      type = fact.field(name);
      if (type == null || (fact.type() == Settings.class && !name.equals("rule"))) {
        faults.add(
            at,
            "'" + fact.name() + "' has no field '" + name + "'",
            "a field of the fact",
            Spelling.instead(name, fact.fields().keySet()));
        return null;
      }
      so = so.isEmpty() ? name : so + "." + name;
      type = sure(so, type);
      fact = type.fields();
    }
    return type;
  }

  private FieldType sure(String name, FieldType type) {
    return scope.isSure(name) ? type.nowKnown() : type;
  }

  void mayBeUnknown(String name, int at) {
    faults.add(
        at,
        "'" + name + "' may be unknown here",
        "unknown is never reckoned with and never counts as another value",
        "write " + name + " != null before it");
  }

  @Nullable FieldType setting(Expression.Setting setting) {
    FieldType holder = scope.use(setting.variable());
    if (holder == null && scope.isLost(setting.variable())) {
      return null;
    }
    if (holder == null || holder.type() != Settings.class) {
      faults.add(
          setting.at(),
          "'" + setting.variable() + "' is not the settings",
          "numbers are read from the settings",
          "bind them first: $set : Settings( rule == \"" + card.rule() + "\" )");
      return null;
    }
    FieldType by = null;
    if (setting.by() != null) {
      by = variable(new Expression.Variable(setting.by(), List.of(), setting.at()));
      if (by == null) {
        return null;
      }
      if (!by.known()) {
        mayBeUnknown(setting.by(), setting.at());
        return null;
      }
    }
    card.reads(setting, by, faults);
    return new FieldType(double.class, Kind.NUMBER, true);
  }

  @Nullable FieldType constant(Expression.Constant constant) {
    Class<?> type = card.words(constant.type());
    if (type == null) {
      faults.add(
          constant.at(),
          "'" + constant.type() + "." + constant.name() + "' is no word of a fact",
          "a word of a closed list",
          Spelling.instead(constant.type(), card.wordLists()));
      return null;
    }
    List<String> names = new ArrayList<>();
    for (Object each : type.getEnumConstants()) {
      names.add(((Enum<?>) each).name());
    }
    if (!names.contains(constant.name())) {
      faults.add(
          constant.at(),
          "'" + constant.type() + "' has no word '" + constant.name() + "'",
          "a word of the list",
          Spelling.instead(constant.name(), names));
      return null;
    }
    return new FieldType(type, Kind.WORD, true);
  }

  @Nullable FieldType word(Expression.Word word) {
    if (!word.text().matches("[a-z][a-z0-9-]{0,59}")) {
      faults.add(
          word.at(),
          "the text \"" + word.text() + "\" stands in the rule",
          "texts stand in the card; a rule knows plain words only",
          "move it to the card's why");
      return null;
    }
    return new FieldType(String.class, Kind.TEXT, true);
  }

  /** How a field or variable is written, null for anything else. */
  static @Nullable String spelling(Expression expression) {
    if (expression instanceof Expression.Field field) {
      return String.join(".", field.path());
    }
    if (expression instanceof Expression.Variable variable) {
      return variable.path().isEmpty()
          ? variable.name()
          : variable.name() + "." + String.join(".", variable.path());
    }
    return null;
  }
}
