package peakproof.measure;

import static org.assertj.core.api.Assertions.fail;

import java.lang.reflect.RecordComponent;
import java.util.Collection;

/** Looks through a result for numbers that are none; what a document says it leaves alone. */
final class Finite {
  private Finite() {}

  /** How many numbers were found. */
  static int check(Object value) throws ReflectiveOperationException {
    if (value instanceof Number number) {
      if (!Double.isFinite(number.doubleValue())) {
        fail("%s found", number);
      }
      return 1;
    }
    int numbers = 0;
    if (value instanceof Collection<?> many) {
      for (Object each : many) {
        numbers += check(each);
      }
    } else if (value instanceof Record && measured(value.getClass())) {
      for (RecordComponent component : value.getClass().getRecordComponents()) {
        component.getAccessor().setAccessible(true);
        Object part = component.getAccessor().invoke(value);
        if (part != null) {
          numbers += check(part);
        }
      }
    }
    return numbers;
  }

  private static boolean measured(Class<?> type) {
    return type.getPackage().equals(Amount.class.getPackage());
  }
}
