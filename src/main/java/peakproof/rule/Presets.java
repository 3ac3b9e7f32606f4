package peakproof.rule;

import java.util.Map;
import peakproof.document.Place;
import peakproof.fact.Settings;

/**
 * What each preset puts in the place of the cards' numbers, as {@code presets.yaml} has it.
 *
 * @param differences by preset, rule and setting
 */
public record Presets(Map<Preset, Map<String, Map<String, Difference>>> differences) {
  /**
   * A number of a preset.
   *
   * @param text as written
   * @param because why it differs, in words
   */
  public record Difference(Settings.Value value, String text, String because, Place place) {}

  /** The differences of one preset by rule and setting; none for the default. */
  public Map<String, Map<String, Difference>> of(Preset preset) {
    return differences.getOrDefault(preset, Map.of());
  }
}
