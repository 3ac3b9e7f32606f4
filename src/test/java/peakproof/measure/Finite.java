package peakproof.measure;

import static org.assertj.core.api.Assertions.fail;

import java.lang.reflect.RecordComponent;
import java.util.Collection;

/** Looks through a result for numbers that are none. */
final class Finite {
  private Finite() {}

  static void check(Object value) throws ReflectiveOperationException {
    if (value instanceof Double number) {
      if (!Double.isFinite(number)) {
        fail("%s found", number);
      }
    } else if (value instanceof Collection<?> many) {
      for (Object each : many) {
        check(each);
      }
    } else if (value instanceof Record) {
      for (RecordComponent component : value.getClass().getRecordComponents()) {
        Object part = component.getAccessor().invoke(value);
        if (part != null) {
          check(part);
        }
      }
    }
  }
}
