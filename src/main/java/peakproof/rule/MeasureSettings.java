package peakproof.rule;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import peakproof.measure.Constants;

/** The settings of {@code measures.yaml}, and the constants they come to for a plan. */
public final class MeasureSettings {
  private final Map<String, Card.Setting> settings;
  private final Supplier<Constants> shipped;

  /** Takes the settings as the file has them, in its order. */
  public MeasureSettings(Map<String, Card.Setting> settings) {
    this.settings = settings;
    this.shipped = Once.of(() -> with(Map.of()));
  }

  /** The settings by name, in the order of the file. */
  public Map<String, Card.Setting> settings() {
    return settings;
  }

  /** The constants as shipped. */
  public Constants shipped() {
    return shipped.get();
  }

  /** The constants with some of them changed; most plans change none. */
  Constants changed(Map<String, Double> changes) {
    return changes.isEmpty() ? shipped() : with(changes);
  }

  private Constants with(Map<String, Double> changes) {
    Map<String, Double> values = new TreeMap<>();
    settings.forEach((name, setting) -> values.put(name, setting.value().number()));
    values.putAll(changes);
    return new Constants(values);
  }
}
