package peakproof.rule;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.rule.FieldType.Kind;

/**
 * Finds out what each part of a condition is, and what does not go together. Above all it keeps
 * unknown values out of arithmetic, where the engine would fail on every plan, and out of denials,
 * where "not known" would pass for "another".
 */
final class ExpressionTyping {
  private static final Set<String> ORDERS = Set.of("<", "<=", ">", ">=");
  private static final Set<String> JOINS = Set.of("&&", "||");
  private static final FieldType NULL = new FieldType(void.class, Kind.OPAQUE, false);

  private final Scope scope;
  private final Names names;
  private final RuleFaults faults;

  ExpressionTyping(Scope scope, References card, RuleFaults faults) {
    this.scope = scope;
    this.faults = faults;
    names = new Names(scope, card, faults);
  }

  /** Reads a whole condition: it must hold or not, or bind a field. */
  void condition(Expression expression) {
    if (expression instanceof Expression.Binding binding) {
      bind(binding);
    } else {
      truth(expression);
      makeSure(expression);
    }
  }

  private void bind(Expression.Binding binding) {
    if (scope.isBound(binding.variable())) {
      faults.add(
          binding.at(),
          "'" + binding.variable() + "' is bound twice",
          "each variable once",
          "take another name");
      return;
    }
    FieldType type = names.field(binding.field());
    if (type == null) {
      scope.lose(binding.variable());
    } else {
      scope.bind(binding.variable(), String.join(".", binding.field().path()), type);
    }
  }

  private void makeSure(Expression expression) {
    if (expression instanceof Expression.Pair pair) {
      if (pair.operator().equals("&&")) {
        makeSure(pair.left());
        makeSure(pair.right());
      } else if (pair.operator().equals("!=") && pair.right() instanceof Expression.Unknown) {
        String name = Names.spelling(pair.left());
        if (name != null) {
          scope.makeSure(name);
        }
      }
    }
  }

  /** A yes or no; {@code known} is false when an unknown value makes it a no. */
  private @Nullable FieldType truth(Expression expression) {
    FieldType type = type(expression);
    if (type != null && type.kind() != Kind.TRUTH) {
      faults.add(
          expression.at(),
          "this is " + words(type),
          "a condition holds or does not",
          "compare it with something");
      return null;
    }
    String name = Names.spelling(expression);
    if (type != null && name != null && !type.known()) {
      faults.add(
          expression.at(),
          "'" + name + "' may be unknown here",
          "only what is always known can stand alone",
          "write " + name + " == true, or " + name + " == false");
    }
    return type;
  }

  private @Nullable FieldType type(Expression expression) {
    if (expression instanceof Expression.Field field) {
      return names.field(field);
    }
    if (expression instanceof Expression.Variable variable) {
      return names.variable(variable);
    }
    if (expression instanceof Expression.Setting setting) {
      return names.setting(setting);
    }
    if (expression instanceof Expression.Constant constant) {
      return names.constant(constant);
    }
    if (expression instanceof Expression.Word word) {
      return names.word(word);
    }
    if (expression instanceof Expression.Not not) {
      return denial(not);
    }
    if (expression instanceof Expression.Among among) {
      return among(among);
    }
    if (expression instanceof Expression.Pair pair) {
      return pair(pair);
    }
    return expression instanceof Expression.Truth ? yesOrNo(true) : NULL;
  }

  private @Nullable FieldType denial(Expression.Not not) {
    Set<String> sure = scope.sure();
    FieldType inner = truth(not.inner());
    scope.restore(sure);
    if (inner != null && !inner.known() && Names.spelling(not.inner()) == null) {
      faults.add(
          not.at(),
          "this denies a comparison in which something may be unknown",
          "unknown would pass for the opposite",
          "compare it with != null first");
    }
    return inner == null ? null : yesOrNo(true);
  }

  private @Nullable FieldType among(Expression.Among among) {
    FieldType left = type(among.left());
    for (Expression choice : among.choices()) {
      FieldType right = type(choice);
      if (left != null && right != null) {
        same(left, right, choice.at());
      }
    }
    return left == null ? null : yesOrNo(left.known());
  }

  private @Nullable FieldType pair(Expression.Pair pair) {
    if (JOINS.contains(pair.operator())) {
      return join(pair);
    }
    FieldType left = type(pair.left());
    FieldType right = type(pair.right());
    if (left == null || right == null) {
      return null;
    }
    if (pair.operator().equals("contains")) {
      return contains(left, right, pair);
    }
    if (ORDERS.contains(pair.operator())) {
      ordered(left, pair.left().at());
      ordered(right, pair.right().at());
      same(left, right, pair.right().at());
      return yesOrNo(left.known() && right.known());
    }
    if (pair.operator().equals("==") || pair.operator().equals("!=")) {
      return equal(left, right, pair);
    }
    return sum(left, right, pair);
  }

  private @Nullable FieldType join(Expression.Pair pair) {
    Set<String> sure = scope.sure();
    FieldType left = truth(pair.left());
    if (pair.operator().equals("&&")) {
      makeSure(pair.left());
    } else {
      scope.restore(sure);
    }
    FieldType right = truth(pair.right());
    if (pair.operator().equals("||")) {
      scope.restore(sure);
    }
    return left == null || right == null ? null : yesOrNo(left.known() && right.known());
  }

  private FieldType equal(FieldType left, FieldType right, Expression.Pair pair) {
    if (right.equals(NULL)) {
      if (left.known()) {
        faults.add(
            pair.at(),
            "this is compared with null, but it is always known",
            "null stands for what the coach did not write",
            "take the comparison out");
      }
      return yesOrNo(true);
    }
    same(left, right, pair.right().at());
    if (pair.operator().equals("!=")) {
      known(left, pair.left());
      known(right, pair.right());
    }
    return yesOrNo(left.known() && right.known());
  }

  private FieldType contains(FieldType left, FieldType right, Expression.Pair pair) {
    if (left.kind() != Kind.SEVERAL) {
      faults.add(
          pair.at(),
          "'contains' asks " + words(left),
          "only a list contains something",
          "write == instead");
    } else {
      known(left, pair.left());
      same(left.member(), right, pair.right().at());
    }
    return yesOrNo(true);
  }

  private FieldType sum(FieldType left, FieldType right, Expression.Pair pair) {
    number(left, pair.left());
    number(right, pair.right());
    if (pair.operator().equals("/") && left.isWhole() && right.isWhole()) {
      faults.add(
          pair.at(),
          "a whole number is divided by a whole number",
          "the engine would drop what is left over",
          "let the fact hold the share");
    }
    Expression field = ownField(pair);
    if (field != null && readsElsewhere(pair)) {
      faults.add(
          field.at(),
          "'" + Names.spelling(field) + "' is reckoned with a setting or another fact",
          "what takes part in that is bound first",
          "write $x : " + Names.spelling(field) + " before it and $x here");
    }
    boolean whole = left.isWhole() && right.isWhole();
    return new FieldType(whole ? int.class : double.class, Kind.NUMBER, true);
  }

  private static @Nullable Expression ownField(Expression expression) {
    if (expression instanceof Expression.Pair pair) {
      Expression left = ownField(pair.left());
      return left != null ? left : ownField(pair.right());
    }
    return expression instanceof Expression.Field ? expression : null;
  }

  private boolean readsElsewhere(Expression expression) {
    return expression instanceof Expression.Setting
        || (expression instanceof Expression.Variable variable
            && scope.isOfEarlierFact(variable.name()))
        || (expression instanceof Expression.Pair pair
            && (readsElsewhere(pair.left()) || readsElsewhere(pair.right())));
  }

  private void ordered(FieldType type, int at) {
    if (type.kind() != Kind.NUMBER && type.kind() != Kind.ORDERED) {
      faults.add(
          at,
          words(type) + " has no size",
          "numbers and dates are compared by size",
          "write == or != instead");
    }
  }

  private void number(FieldType type, Expression expression) {
    if (type.kind() != Kind.NUMBER) {
      faults.add(
          expression.at(),
          "this is " + words(type),
          "only numbers are reckoned with",
          "take a field that is a number");
    } else {
      known(type, expression);
    }
  }

  private void known(FieldType type, Expression expression) {
    String name = Names.spelling(expression);
    if (!type.known() && name != null) {
      names.mayBeUnknown(name, expression.at());
    }
  }

  private void same(FieldType left, FieldType right, int at) {
    boolean alike =
        left.kind() == right.kind()
            && (left.kind() == Kind.NUMBER
                || left.kind() == Kind.TRUTH
                || left.type().equals(right.type()));
    if (!alike || left.kind() == Kind.OPAQUE || left.kind() == Kind.SEVERAL) {
      faults.add(
          at,
          words(left) + " is compared with " + words(right),
          "both sides are of one kind",
          left.kind() == Kind.WORD
              ? "write " + left.type().getSimpleName() + "." + left.type().getEnumConstants()[0]
              : "compare it with " + words(left));
    }
  }

  private static FieldType yesOrNo(boolean known) {
    return new FieldType(boolean.class, Kind.TRUTH, known);
  }

  private static String words(FieldType type) {
    return type.equals(NULL) ? "null" : type.kind().words();
  }
}
