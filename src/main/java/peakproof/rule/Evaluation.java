package peakproof.rule;

import java.lang.reflect.InvocationTargetException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Settings;
import peakproof.measure.DistanceClass;

/**
 * What a vetted condition comes to for one fact, to explain a judgement; the engine alone judges. A
 * test holds the two against each other over all cases.
 *
 * @param own the fact the condition is about
 * @param bound what the variables hold; null for what is not known
 */
record Evaluation(Object own, Map<String, @Nullable Object> bound, FactTypes facts) {
  /** True when the condition holds; what is unknown holds nothing. */
  boolean holds(Expression condition) {
    return Boolean.TRUE.equals(value(condition));
  }

  /** The value of any part of a condition; null when it is not known. */
  @Nullable Object value(Expression expression) {
    if (expression instanceof Expression.Field field) {
      return path(own, field.path());
    }
    if (expression instanceof Expression.Variable variable) {
      return path(bound.get(variable.name()), variable.path());
    }
    if (expression instanceof Expression.Setting setting) {
      return setting(setting);
    }
    if (expression instanceof Expression.Constant constant) {
      return constant(constant);
    }
    if (expression instanceof Expression.Word word) {
      return word.text();
    }
    if (expression instanceof Expression.Truth truth) {
      return truth.value();
    }
    if (expression instanceof Expression.Not not) {
      return !holds(not.inner());
    }
    if (expression instanceof Expression.Among among) {
      Object left = value(among.left());
      return among.choices().stream().anyMatch(choice -> equal(left, value(choice)));
    }
    return expression instanceof Expression.Pair pair ? pair(pair) : null;
  }

  private @Nullable Object pair(Expression.Pair pair) {
    return switch (pair.operator()) {
      case "&&" -> holds(pair.left()) && holds(pair.right());
      case "||" -> holds(pair.left()) || holds(pair.right());
      case "==" -> equal(value(pair.left()), value(pair.right()));
      case "!=" -> !equal(value(pair.left()), value(pair.right()));
      case "contains" ->
          value(pair.left()) instanceof Collection<?> several
              && several.contains(value(pair.right()));
      case "<", "<=", ">", ">=" -> ordered(pair);
      default -> sum(pair);
    };
  }

  private boolean ordered(Expression.Pair pair) {
    Object left = value(pair.left());
    Object right = value(pair.right());
    if (left == null || right == null) {
      return false;
    }
    int order = compare(left, right);
    return switch (pair.operator()) {
      case "<" -> order < 0;
      case "<=" -> order <= 0;
      case ">" -> order > 0;
      default -> order >= 0;
    };
  }

  /** Both are numbers, or both of one class that has an order: the typing has seen to it. */
  @SuppressWarnings("unchecked")
  private static int compare(Object left, Object right) {
    return left instanceof Number one && right instanceof Number other
        ? Double.compare(one.doubleValue(), other.doubleValue())
        : ((Comparable<Object>) left).compareTo(right);
  }

  private static boolean equal(@Nullable Object left, @Nullable Object right) {
    return left instanceof Number one && right instanceof Number other
        ? one.doubleValue() == other.doubleValue()
        : Objects.equals(left, right);
  }

  private @Nullable Object sum(Expression.Pair pair) {
    if (!(value(pair.left()) instanceof Number left)
        || !(value(pair.right()) instanceof Number right)) {
      return null;
    }
    double one = left.doubleValue();
    double other = right.doubleValue();
    return switch (pair.operator()) {
      case "+" -> one + other;
      case "-" -> one - other;
      case "*" -> one * other;
      default -> one / other;
    };
  }

  private @Nullable Object setting(Expression.Setting call) {
    Settings.Value value = settingValue(call);
    if (value == null) {
      return null;
    }
    return call.reader().equals("km") ? value.number() / 1000 : value.number();
  }

  /** A setting as it counts; null when it differs by a distance that is not known. */
  Settings.@Nullable Value settingValue(Expression.Setting call) {
    if (!(bound.get(call.variable()) instanceof Settings settings)) {
      return null;
    }
    return settings.values().get(call.name() + suffix(call));
  }

  private String suffix(Expression.Setting call) {
    String by = call.by();
    return by != null && bound.get(by) instanceof DistanceClass distance ? distance.suffix() : "";
  }

  private @Nullable Object constant(Expression.Constant constant) {
    Class<?> list = facts.wordLists().get(constant.type());
    Object[] words = list == null ? null : list.getEnumConstants();
    if (words != null) {
      for (Object word : words) {
        if (((Enum<?>) word).name().equals(constant.name())) {
          return word;
        }
      }
    }
    throw new IllegalStateException("the rule was checked: " + constant);
  }

  private static @Nullable Object path(@Nullable Object start, List<String> path) {
    Object at = start;
    for (String name : path) {
      if (at != null && !name.equals("this")) {
        at = read(at, name);
      }
    }
    return at;
  }

  /** A field of a fact; rules are checked to name only fields there are. */
  private static @Nullable Object read(Object fact, String name) {
    try {
      return fact.getClass().getMethod(name).invoke(fact);
    } catch (NoSuchMethodException | IllegalAccessException e) {
      throw new IllegalStateException("the rule was checked, but there is no " + name, e);
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(e.getCause());
    }
  }
}
