package peakproof.rule;

import java.lang.reflect.AnnotatedType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.util.Collection;
import org.jspecify.annotations.Nullable;

/**
 * What a field holds.
 *
 * @param type the class; for a list or set, that of its members
 * @param kind what a condition may do with it
 * @param known false when the value may be missing (its accessor is {@code @Nullable})
 */
public record FieldType(Class<?> type, Kind kind, boolean known) {
  /** What a condition may do with a value. */
  public enum Kind {
    /** Compared by size and reckoned with. */
    NUMBER("a number"),
    /** Holds or does not. */
    TRUTH("a yes or no"),
    /** Equal to a word in quotes or not. */
    TEXT("a text"),
    /** Equal to a word of a closed list or not. */
    WORD("a word of a closed list"),
    /** Compared by size with its like: dates, times. */
    ORDERED("a date or time"),
    /** Contains something or not. */
    SEVERAL("a list"),
    /** Has fields of its own. */
    FACT("a fact"),
    /** Nothing a condition can use. */
    OPAQUE("nothing a condition can use");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** The kind in plain words. */
    public String words() {
      return words;
    }
  }

  static FieldType of(AnnotatedType annotated) {
    boolean known = !annotated.isAnnotationPresent(Nullable.class);
    Type type = annotated.getType();
    if (type instanceof ParameterizedType generic
        && generic.getRawType() instanceof Class<?> raw
        && Collection.class.isAssignableFrom(raw)) {
      return new FieldType(classOf(generic.getActualTypeArguments()[0]), Kind.SEVERAL, known);
    }
    Class<?> plain = classOf(type);
    return new FieldType(plain, kind(plain), known);
  }

  private static Class<?> classOf(Type type) {
    if (type instanceof Class<?> plain) {
      return plain;
    }
    if (type instanceof WildcardType wildcard) {
      return classOf(wildcard.getUpperBounds()[0]);
    }
    return type instanceof ParameterizedType generic ? classOf(generic.getRawType()) : Object.class;
  }

  private static Kind kind(Class<?> type) {
    if (type == boolean.class || type == Boolean.class) {
      return Kind.TRUTH;
    }
    if ((type.isPrimitive() && type != char.class) || Number.class.isAssignableFrom(type)) {
      return Kind.NUMBER;
    }
    if (type == String.class) {
      return Kind.TEXT;
    }
    if (type.isEnum()) {
      return Kind.WORD;
    }
    if (Comparable.class.isAssignableFrom(type) && type.getName().startsWith("java.time.")) {
      return Kind.ORDERED;
    }
    return type.getName().startsWith("peakproof.") ? Kind.FACT : Kind.OPAQUE;
  }

  /** A single member of a list or set. */
  FieldType member() {
    return new FieldType(type, kind(type), true);
  }

  /** The same, once a condition has made sure of it. */
  FieldType nowKnown() {
    return new FieldType(type, kind, true);
  }

  /** The fields it has itself. */
  @Nullable FactType fields() {
    return kind == Kind.FACT ? FactType.of(type) : null;
  }

  /** True for numbers that divide without a remainder. */
  boolean isWhole() {
    return kind == Kind.NUMBER
        && type != double.class
        && type != Double.class
        && type != float.class
        && type != Float.class;
  }
}
