package peakproof.measure;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/** The values of all {@link Constant}s as they count for one plan. */
public final class Constants {
  private static final double SECONDS_A_MINUTE = 60;

  private final Map<Constant, Double> values = new EnumMap<>(Constant.class);

  /**
   * Takes a value for every constant.
   *
   * @param byName by the names of {@code measures.yaml}; shares 0 to 1, durations in minutes (also
   *     those of {@link Constant.Unit#SECONDS}), distances in metres, all else as written
   * @throws IllegalArgumentException when a constant has no value, a value is not finite, or a name
   *     is no constant: the reader of the file must have refused that
   */
  public Constants(Map<String, Double> byName) {
    Map<String, Double> left = new TreeMap<>(byName);
    for (Constant constant : Constant.values()) {
      double times = constant.unit() == Constant.Unit.SECONDS ? SECONDS_A_MINUTE : 1;
      Double value = left.remove(constant.word());
      if (value == null || !Double.isFinite(times * value)) {
        throw new IllegalArgumentException("no value for the measure setting " + constant.word());
      }
      values.put(constant, times * value);
    }
    if (!left.isEmpty()) {
      throw new IllegalArgumentException("no such measure settings: " + left.keySet());
    }
  }

  /** The value, in the constant's {@link Constant#unit()}. */
  public double of(Constant constant) {
    Double value = values.get(constant);
    if (value == null) {
      throw new IllegalStateException(constant + " was checked but is not there");
    }
    return value;
  }
}
