package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every public method of every public class of the package, found in its folder and so a new one
 * too, called with arguments of any kind: none throws, none gives a number that is none, and all
 * give a number at times, so that none is out of reach of this test.
 */
class EveryEntryPointTest {
  private static final int RUNS = 60;

  /** Until a number is given. */
  private static final int MOST_RUNS = 20_000;

  private static final int SOUND = 300;

  /** From all absurd to nearly all sound: measures look no further than the first absurd number. */
  private static final int[] ODD_ONE_IN = {1, 2, 10, SOUND};

  @Test
  void givesFiniteNumbersWhateverComesIn() throws Exception {
    List<String> faults = new ArrayList<>();
    for (Method method : entryPoints()) {
      int numbers = 0;
      boolean numeric = numeric(method.getReturnType());
      for (int odd : ODD_ONE_IN) {
        AnyInput input = new AnyInput(method.toString().hashCode(), odd);
        int most = numeric && odd == SOUND ? MOST_RUNS : RUNS;
        for (int run = 0; numbers >= 0 && (run < RUNS || numbers == 0 && run < most); run++) {
          numbers = checked(method, input, numbers, faults);
        }
      }
      if (numbers == 0 && numeric) {
        faults.add("never a number: " + method);
      }
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void findsTheEntryPointsOfThePackage() throws Exception {
    assertThat(entryPoints())
        .contains(
            Pace.class.getMethod("kmh", double.class, double.class),
            TaperShape.class.getMethod("volumes", double.class, int.class),
            CriticalRate.Fit.class.getMethod("rateFor", double.class))
        .doesNotContain(CriticalRate.Fit.class.getMethod("critical"));
  }

  /** The numbers found so far, or below zero when one is none. */
  private static int checked(Method method, AnyInput input, int before, List<String> faults)
      throws ReflectiveOperationException {
    Object on =
        Modifier.isStatic(method.getModifiers())
            ? null
            : input.instance(method.getDeclaringClass());
    Object[] arguments = input.arguments(method);
    String call = method + " of " + on + Arrays.deepToString(arguments);
    try {
      Object result = method.invoke(on, arguments);
      return before + (result == null ? 0 : Finite.check(result));
    } catch (InvocationTargetException e) {
      faults.add(e.getCause() + " by " + call);
    } catch (AssertionError e) {
      faults.add(e.getMessage() + " by " + call);
    }
    return -1;
  }

  private static boolean numeric(Class<?> type) {
    return type == double.class
        || type == Double.class
        || type == Amount.class
        || type == Band.class
        || type.isRecord();
  }

  private static List<Method> entryPoints() throws Exception {
    return classes().stream()
        .filter(EveryEntryPointTest::open)
        .flatMap(type -> Arrays.stream(type.getDeclaredMethods()).filter(each -> own(each, type)))
        .sorted(Comparator.comparing(Method::toString))
        .toList();
  }

  private static boolean open(Class<?> type) {
    Class<?> around = type.getDeclaringClass();
    return Modifier.isPublic(type.getModifiers()) && (around == null || open(around));
  }

  /** What a record or an enumeration has by itself is no entry point. */
  private static boolean own(Method method, Class<?> type) {
    boolean component =
        type.isRecord()
            && Arrays.stream(type.getRecordComponents())
                .anyMatch(each -> each.getAccessor().equals(method));
    boolean given =
        List.of("equals", "hashCode", "toString", "values", "valueOf").contains(method.getName());
    return Modifier.isPublic(method.getModifiers())
        && !method.isSynthetic()
        && !component
        && !given;
  }

  private static List<Class<?>> classes() throws IOException, URISyntaxException {
    Path root = Path.of(Amount.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    List<Class<?>> classes = new ArrayList<>();
    try (Stream<Path> files = Files.list(root.resolve("peakproof").resolve("measure"))) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(".class") && !name.startsWith("package-info")) {
          classes.add(
              Class.forName(
                  "peakproof.measure." + name.substring(0, name.length() - ".class".length())));
        }
      }
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
    return classes;
  }
}
