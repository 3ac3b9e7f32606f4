package peakproof.fact;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One computed number of a plan, for whoever wants to see them all.
 *
 * @param name in kebab case: {@code week-load}
 * @param scope what it is of: {@code week}, {@code day}, {@code sport}, {@code leg} or {@code
 *     session} with its value, coarse to fine; empty for the plan as a whole
 * @param value finite, or null when unknown
 * @param coverage share of the days it should rest on that are known; null where it is of no span
 * @param from JSON pointers of the entries it rests on
 * @param unknown why there is no value; null when there is one
 */
public record Measured(
    String name,
    Map<String, String> scope,
    @Nullable Double value,
    String unit,
    @Nullable Double coverage,
    List<String> from,
    @Nullable String unknown) {

  /** What a value is of, put together key by key. */
  record Scope(Map<String, String> keys) {
    static final Scope PLAN = new Scope(Map.of());

    Scope and(String key, Object value) {
      Map<String, String> more = new LinkedHashMap<>(keys);
      more.put(key, value.toString());
      return new Scope(more);
    }
  }

  /** A value where there is one, else unknown for the reason. */
  static Measured of(
      String name,
      Scope scope,
      @Nullable Double value,
      String unit,
      @Nullable Double coverage,
      List<String> from,
      String because) {
    return new Measured(
        name,
        scope.keys(),
        Exact.of(value),
        unit,
        coverage,
        from.stream().distinct().toList(),
        value == null ? because : null);
  }
}
