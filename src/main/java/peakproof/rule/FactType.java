package peakproof.rule;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Fact;

/**
 * A fact as a rule or a card sees it: a name and fields.
 *
 * @param fields its public accessors by name
 */
public record FactType(Class<?> type, Map<String, FieldType> fields) {
  /** The fields of a class: its public methods that take nothing and give something. */
  static FactType of(Class<?> type) {
    Map<String, FieldType> fields = new TreeMap<>();
    for (Method method : type.getMethods()) {
      if (method.getParameterCount() == 0
          && method.getReturnType() != void.class
          && method.getDeclaringClass() != Object.class
          && !Modifier.isStatic(method.getModifiers())
          && !isOfEveryObject(method.getName())) {
        fields.put(method.getName(), FieldType.of(method.getAnnotatedReturnType()));
      }
    }
    return new FactType(type, Map.copyOf(fields));
  }

  private static boolean isOfEveryObject(String name) {
    return name.equals("toString") || name.equals("hashCode") || name.equals("getClass");
  }

  /** The name in rules: {@code Week}. */
  public String name() {
    return type.getSimpleName();
  }

  /** The name in the texts of cards: {@code week}. */
  public String placeholder() {
    return name().substring(0, 1).toLowerCase(Locale.ROOT) + name().substring(1);
  }

  /** True when a rule may report it. */
  public boolean canBeReported() {
    return Fact.class.isAssignableFrom(type);
  }

  @Nullable FieldType field(String name) {
    return fields.get(name);
  }
}
