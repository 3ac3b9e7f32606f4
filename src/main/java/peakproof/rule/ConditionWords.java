package peakproof.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Settings;
import peakproof.fact.Settings.Kind;

/**
 * A condition as a sentence, in general or with the values of one fact.
 *
 * @param variables what each bound variable is, in words
 */
record ConditionWords(Map<String, String> variables, Settings settings, Spoken spoken) {
  /** Kinds whose values are written otherwise than a bare number of the same field. */
  private static final Set<Kind> ALIKE = Set.of(Kind.SHARE, Kind.TEMPERATURE);

  /** What is asked: {@code open water swims below 1 (swims-per-week)}. */
  String asked(Expression expression) {
    if (expression instanceof Expression.Pair pair) {
      if (pair.operator().equals("&&")) {
        return bracketed(pair.left()) + " and " + bracketed(pair.right());
      }
      if (pair.operator().equals("||")) {
        return asked(pair.left()) + ", or " + asked(pair.right());
      }
      if (pair.right() instanceof Expression.Unknown) {
        return words(pair.left()) + (pair.operator().equals("!=") ? " known" : " not known");
      }
      if (pair.right() instanceof Expression.Truth truth) {
        boolean asks = truth.value() == pair.operator().equals("==");
        return (asks ? "" : "not ") + words(pair.left());
      }
      return words(pair.left())
          + " "
          + operator(pair.operator(), null)
          + " "
          + amount(pair.right(), null, "");
    }
    if (expression instanceof Expression.Not not) {
      return "not " + bracketed(not.inner());
    }
    if (expression instanceof Expression.Among among) {
      return words(among.left()) + " " + choices(among);
    }
    return words(expression);
  }

  private String bracketed(Expression expression) {
    return expression instanceof Expression.Pair pair && pair.operator().equals("||")
        ? "(" + asked(pair) + ")"
        : asked(expression);
  }

  private String choices(Expression.Among among) {
    return among.choices().stream().map(this::words).collect(Collectors.joining(" or "));
  }

  /** What is so: {@code open water swims 0, below 1 (swims-per-week)}. */
  String found(Expression expression, Evaluation facts) {
    boolean holds = facts.holds(expression);
    if (expression instanceof Expression.Pair pair) {
      if (pair.operator().equals("&&") || pair.operator().equals("||")) {
        return joined(pair, facts, holds);
      }
      return compared(pair, facts, holds);
    }
    if (expression instanceof Expression.Not not) {
      return not.inner() instanceof Expression.Field field
          ? yesOrNo(field, facts)
          : found(not.inner(), facts);
    }
    if (expression instanceof Expression.Among among) {
      Object is = facts.value(among.left());
      String value = spoken.field(name(among.left()), is);
      return words(among.left()) + " " + value + (holds ? "" : ", not " + choices(among));
    }
    return yesOrNo(expression, facts);
  }

  /**
   * Of alternatives those that hold, else all; of things that must all hold the first that fails.
   */
  private String joined(Expression.Pair pair, Evaluation facts, boolean holds) {
    List<Expression> sides = new ArrayList<>();
    flatten(pair, pair.operator(), sides);
    boolean some = pair.operator().equals("||") == holds;
    List<String> told =
        sides.stream()
            .filter(side -> !some || facts.holds(side) == holds)
            .map(side -> found(side, facts))
            .distinct()
            .toList();
    return String.join("; ", told);
  }

  private static void flatten(Expression expression, String operator, List<Expression> sides) {
    if (expression instanceof Expression.Pair pair && pair.operator().equals(operator)) {
      flatten(pair.left(), operator, sides);
      flatten(pair.right(), operator, sides);
    } else {
      sides.add(expression);
    }
  }

  private String yesOrNo(Expression expression, Evaluation facts) {
    Object value = facts.value(expression);
    String words = words(expression);
    return value == null
        ? words + " not known"
        : (Boolean.TRUE.equals(value) ? "" : "not ") + words;
  }

  private String compared(Expression.Pair pair, Evaluation facts, boolean holds) {
    Object left = facts.value(pair.left());
    if (pair.right() instanceof Expression.Unknown || left == null) {
      return words(pair.left()) + (left == null ? " not known" : " known");
    }
    if (pair.right() instanceof Expression.Truth) {
      return yesOrNo(pair.left(), facts);
    }
    Object right = facts.value(pair.right());
    String name = name(pair.left());
    String value = value(name, left, pair.right(), facts);
    String other = amount(pair.right(), facts, name);
    if (left instanceof Number one && right instanceof Number two && !one.equals(two)) {
      String asLeft = value(name, right, pair.right(), facts);
      value = value.equals(asLeft) ? spoken.exact(name, one.doubleValue()) : value;
    }
    if (pair.operator().equals("==")) {
      return words(pair.left())
          + " "
          + (holds ? like(pair, other, value) : value + ", not " + other);
    }
    String operator = operator(pair.operator(), left) + " ";
    return words(pair.left()) + " " + value + ", " + (holds ? "" : "not ") + operator + other;
  }

  /** What both sides are, said once: a setting with its name, anything else by its value. */
  private static String like(Expression.Pair pair, String other, String value) {
    return pair.right() instanceof Expression.Setting ? other : value;
  }

  /** A value in its own unit; one held against a share or temperature of the card, in that. */
  private String value(String name, Object left, Expression right, Evaluation facts) {
    Settings.Value asked =
        right instanceof Expression.Setting call ? facts.settingValue(call) : null;
    if (asked != null && ALIKE.contains(asked.kind()) && left instanceof Number number) {
      double value = number.doubleValue();
      return spoken.setting(new Settings.Value(asked.kind(), value, value));
    }
    return spoken.field(name, left);
  }

  /** The right side, with what it comes to where that is known. */
  private String amount(Expression expression, @Nullable Evaluation facts, String like) {
    if (expression instanceof Expression.Setting setting) {
      return setting(setting, facts);
    }
    if (expression instanceof Expression.Constant || expression instanceof Expression.Word) {
      return words(expression);
    }
    if (expression instanceof Expression.Pair sum) {
      String parts =
          amount(sum.left(), facts, like)
              + " "
              + sum.operator().replace('*', '×').replace('-', '−')
              + " "
              + amount(sum.right(), facts, like);
      return facts == null ? parts : spoken.field(like, facts.value(sum)) + " = " + parts;
    }
    return facts == null
        ? words(expression)
        : spoken.field(name(expression), facts.value(expression)) + " (" + words(expression) + ")";
  }

  private String setting(Expression.Setting call, @Nullable Evaluation facts) {
    Settings.Value value =
        facts == null ? settings.values().get(call.name()) : facts.settingValue(call);
    return value == null
        ? "the house's " + call.name()
        : spoken.setting(value) + " (" + call.name() + ")";
  }

  private String words(Expression expression) {
    if (expression instanceof Expression.Field field) {
      return FactWords.plain(String.join(" ", field.path()));
    }
    if (expression instanceof Expression.Variable variable) {
      String of =
          variables.getOrDefault(variable.name(), FactWords.plain(variable.name().substring(1)));
      return variable.path().isEmpty()
          ? of
          : FactWords.plain(String.join(" ", variable.path())) + " of the " + of;
    }
    if (expression instanceof Expression.Constant constant) {
      return FactWords.plain(constant.name().replace('_', ' '));
    }
    if (expression instanceof Expression.Word word) {
      return word.text();
    }
    return asked(expression);
  }

  /** The field a value was read from, which tells its unit. */
  private String name(Expression expression) {
    if (expression instanceof Expression.Field field) {
      return field.path().get(field.path().size() - 1);
    }
    if (expression instanceof Expression.Variable variable) {
      if (!variable.path().isEmpty()) {
        return variable.path().get(variable.path().size() - 1);
      }
      String of = variables.getOrDefault(variable.name(), "");
      return of.replaceAll(" of the .*", "").replace(" ", "");
    }
    return "";
  }

  private static String operator(String operator, @Nullable Object value) {
    boolean date = value instanceof LocalDate;
    return switch (operator) {
      case "<" -> date ? "before" : "below";
      case "<=" -> date ? "on or before" : "at most";
      case ">" -> date ? "after" : "above";
      case ">=" -> date ? "on or after" : "at least";
      case "!=" -> "other than";
      case "contains" -> "holding";
      default -> "is";
    };
  }
}
