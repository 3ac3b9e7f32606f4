package peakproof.rule;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Quantity.NotThat;
import peakproof.fact.Settings;

/**
 * A setting somebody puts in the place of a card's, held against the card.
 *
 * @param value null when it does not fit
 * @param trouble what is wrong with it; null when it fits
 */
record SettingCheck(Settings.@Nullable Value value, @Nullable NotThat<Settings.Value> trouble) {
  /** More names than one reads in a message. */
  private static final int MANY = 12;

  /**
   * Holds a text against the setting it is for.
   *
   * @param known the settings there are, by name
   * @param owner whose they are, for the message
   */
  static SettingCheck of(Map<String, Card.Setting> known, String name, String text, String owner) {
    Card.Setting setting = known.get(name);
    if (setting == null) {
      return wrong(
          "'" + name + "' is no setting of " + owner,
          known.size() > MANY
              ? "a name of its settings"
              : "one of: " + String.join(", ", known.keySet()),
          Spelling.instead(name, known.keySet()));
    }
    Settings.Value value = SettingValue.of(text);
    if (value == null || value.kind() != setting.value().kind()) {
      return wrong(
          "'" + text + "' does not fit the setting " + name,
          SettingReader.words(setting.value().kind()),
          "for example " + setting.text());
    }
    if (!SettingValue.within(value, setting.from(), setting.to())) {
      return wrong(
          "'" + text + "' is out of range for " + name,
          setting.meaning(),
          "a value between the ends of its range on the card; shipped is " + setting.text());
    }
    return new SettingCheck(value, null);
  }

  private static SettingCheck wrong(String what, String expected, String instead) {
    return new SettingCheck(null, new NotThat<>(what, expected, instead));
  }
}
