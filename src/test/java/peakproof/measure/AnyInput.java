package peakproof.measure;

import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Year;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Makes an argument of any type a measure takes, from a seeded source: absurd numbers among sound
 * ones, and every document and record put together from such. What has a factory comes from it.
 */
final class AnyInput {
  private static final LocalDate DAY = LocalDate.of(2027, 5, 30);
  private static final int DEEPEST = 7;

  /** Some records refuse numbers that are none. */
  private static final int TRIES = 1000;

  private static final double[] ODD = {
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY,
    Double.MAX_VALUE,
    -Double.MAX_VALUE,
    Double.MIN_VALUE,
    -Double.MIN_VALUE,
    0,
    -0.0,
    1e-300,
    1e300,
    1e-9,
    -1,
    1
  };
  private static final int[] LENGTHS = {0, 1, 3, 5, 7, 14, 28};
  private static final int[] COUNTS = {-1, 0, 1, 2, 3, 7};
  private static final String[] WORDS = {
    "", "female", "male", "full", "half", "elite", "later", "aero", "allowed", "heavy"
  };

  private static final List<Constants> AT_THEIR_BOUNDS =
      new Random(2027).ints(12).mapToObj(seed -> atTheirBounds(new Random(seed))).toList();

  private final Random random;

  /** One number in so many is absurd. */
  private final int oddOneIn;

  private int length;

  AnyInput(long seed, int oddOneIn) {
    this.random = new Random(seed);
    this.oddOneIn = oddOneIn;
  }

  /** Arguments for a call. */
  Object[] arguments(Executable call) throws ReflectiveOperationException {
    return arguments(call, 0);
  }

  /** What an instance method may be called on. */
  Object instance(Class<?> type) throws ReflectiveOperationException {
    return made(type, 0);
  }

  private Object[] arguments(Executable call, int depth) throws ReflectiveOperationException {
    AnnotatedType[] types = call.getAnnotatedParameterTypes();
    Object[] arguments = new Object[types.length];
    for (int i = 0; i < types.length; i++) {
      arguments[i] = any(types[i], depth);
    }
    return arguments;
  }

  private @Nullable Object any(AnnotatedType annotated, int depth)
      throws ReflectiveOperationException {
    boolean nullable = annotated.isAnnotationPresent(Nullable.class);
    if (nullable && (depth > DEEPEST || random.nextInt(6) == 0)) {
      return null;
    }
    if (annotated.getType() instanceof ParameterizedType generic) {
      AnnotatedType[] of =
          ((AnnotatedParameterizedType) annotated).getAnnotatedActualTypeArguments();
      return several((Class<?>) generic.getRawType(), of, depth);
    }
    return made((Class<?>) annotated.getType(), depth);
  }

  private Object several(Class<?> type, AnnotatedType[] of, int depth)
      throws ReflectiveOperationException {
    boolean leaf = of[0].getType() == Double.class || of[0].getType() == Boolean.class;
    int length = leaf ? length() : random.nextInt(depth > 2 ? 2 : 4);
    boolean known = leaf && random.nextBoolean();
    List<Object> list = new ArrayList<>();
    Map<Object, Object> map = new TreeMap<>();
    for (int left = depth > DEEPEST ? 0 : length; left > 0; left--) {
      Object one = known ? made((Class<?>) of[0].getType(), depth + 1) : any(of[0], depth + 1);
      list.add(one);
      if (of.length > 1) {
        map.put(one, any(of[1], depth + 1));
      }
    }
    if (Map.class.isAssignableFrom(type)) {
      return map;
    }
    return Set.class.isAssignableFrom(type) ? new HashSet<>(list) : list;
  }

  /** Often that of the list before: some measures take days in pairs. */
  private int length() {
    length = random.nextBoolean() ? length : LENGTHS[random.nextInt(LENGTHS.length)];
    return length;
  }

  private Object made(Class<?> type, int depth) throws ReflectiveOperationException {
    if (type == double.class || type == Double.class) {
      return number();
    }
    if (type == int.class || type == Integer.class) {
      return COUNTS[random.nextInt(COUNTS.length)];
    }
    if (type == long.class) {
      return (long) COUNTS[random.nextInt(COUNTS.length)];
    }
    if (type == boolean.class || type == Boolean.class) {
      return random.nextBoolean();
    }
    if (type == String.class) {
      return WORDS[random.nextInt(WORDS.length)];
    }
    if (type == LocalDate.class) {
      return DAY.minusDays(random.nextInt(60));
    }
    if (type == LocalTime.class) {
      return LocalTime.NOON;
    }
    if (type == LocalDateTime.class) {
      return DAY.atTime(LocalTime.NOON);
    }
    if (type == Year.class) {
      return Year.from(DAY);
    }
    if (type == Constants.class) {
      return random.nextBoolean()
          ? ShippedConstants.constants()
          : AT_THEIR_BOUNDS.get(random.nextInt(AT_THEIR_BOUNDS.size()));
    }
    if (type.isEnum()) {
      return type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)];
    }
    if (type.isSealed()) {
      Class<?>[] kinds = type.getPermittedSubclasses();
      return made(kinds[random.nextInt(kinds.length)], depth);
    }
    Object made = byFactory(type, depth);
    return made == null ? byConstructor(type, depth) : made;
  }

  /** Null without a factory, or when it gives nothing. */
  private @Nullable Object byFactory(Class<?> type, int depth) throws ReflectiveOperationException {
    List<Method> factories =
        Arrays.stream(type.getDeclaredMethods())
            .filter(each -> Modifier.isStatic(each.getModifiers()) && each.getReturnType() == type)
            .filter(each -> !Modifier.isPrivate(each.getModifiers()) && !each.isSynthetic())
            .filter(each -> type.getPackage().equals(Amount.class.getPackage()))
            .toList();
    if (factories.isEmpty()) {
      return null;
    }
    Method factory = factories.get(random.nextInt(factories.size()));
    factory.setAccessible(true);
    return factory.invoke(null, arguments(factory, depth + 1));
  }

  private Object byConstructor(Class<?> type, int depth) throws ReflectiveOperationException {
    if (!type.isRecord()) {
      throw new AssertionError("say here how to make a " + type.getName());
    }
    Constructor<?> canonical = type.getDeclaredConstructors()[0];
    canonical.setAccessible(true);
    for (int left = TRIES; left > 0; left--) {
      try {
        return canonical.newInstance(arguments(canonical, depth + 1));
      } catch (InvocationTargetException e) {
        if (!(e.getCause() instanceof IllegalArgumentException)) {
          throw e;
        }
      }
    }
    throw new AssertionError("refuses everything: " + type.getName());
  }

  /** Every constant as shipped or at either end of what a club may set. */
  private static Constants atTheirBounds(Random random) {
    Map<Constant, Double> changed = new EnumMap<>(Constant.class);
    for (Constant constant : Constant.values()) {
      ShippedConstants.Entry entry = ShippedConstants.entries().get(constant.word());
      if (random.nextInt(3) == 0) {
        changed.put(constant, random.nextBoolean() ? entry.from() : entry.to());
      }
    }
    return ShippedConstants.with(changed);
  }

  private double number() {
    return random.nextInt(oddOneIn) == 0
        ? ODD[random.nextInt(ODD.length)]
        : Math.pow(10, 7 * random.nextDouble() - 1.5);
  }
}
