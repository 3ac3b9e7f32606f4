package peakproof.rule;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Place;
import peakproof.document.Plan.SettingText;
import peakproof.document.Positions;

/**
 * Settings that one document puts in the place of others; a later layer wins over an earlier one.
 *
 * @param by whose word it is: {@code preset masters}, {@code house}, {@code plan}
 * @param settings by rule, under its name or a former one, and setting
 */
public record Layer(String by, Map<String, Map<String, Word>> settings) {
  /** A value as written, and where. */
  public record Word(String text, Place place) {}

  /** What a house or plan says. */
  public static Layer of(
      String by, Map<String, Map<String, SettingText>> settings, Positions positions) {
    Map<String, Map<String, Word>> words = new HashMap<>();
    settings.forEach(
        (rule, its) -> {
          Map<String, Word> said = new HashMap<>();
          its.forEach(
              (name, text) -> said.put(name, new Word(text.text(), positions.of(text.at()))));
          words.put(rule, said);
        });
    return new Layer(by, words);
  }

  /** What a preset says. */
  public static Layer of(Preset preset, Presets presets) {
    Map<String, Map<String, Word>> words = new HashMap<>();
    presets
        .of(preset)
        .forEach(
            (rule, its) -> {
              Map<String, Word> said = new HashMap<>();
              its.forEach((name, one) -> said.put(name, new Word(one.text(), one.place())));
              words.put(rule, said);
            });
    return new Layer("preset " + preset.word(), words);
  }

  /** What it says of a setting of a rule; null when it says nothing. */
  @Nullable Word of(String rule, String setting, Ruleset rules) {
    return settings.entrySet().stream()
        .filter(its -> rule.equals(rules.slug(its.getKey())))
        .map(its -> its.getValue().get(setting))
        .filter(word -> word != null)
        .findFirst()
        .orElse(null);
  }
}
