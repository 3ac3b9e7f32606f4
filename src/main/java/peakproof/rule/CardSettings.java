package peakproof.rule;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Settings;

/** Reads the numbers of a card: each with its unit, its range and what it means. */
final class CardSettings {
  /** Before a setting's name where the places of a card's entries are kept. */
  static final String PLACE = "settings/";

  /** How rules and settings are named. */
  static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,59}");

  private static final Set<String> REQUIRED = Set.of("value", "unit", "from", "to", "meaning");
  private static final Set<String> KEYS =
      Set.of("value", "unit", "from", "to", "meaning", "source");

  private CardSettings() {}

  static Map<String, Card.Setting> read(CardEntries entries) {
    Map<String, Card.Setting> settings = new LinkedHashMap<>();
    entries
        .map("settings")
        .forEach(
            (name, tree) -> {
              Card.Setting setting = one(name, entries.below(tree));
              if (!NAME.matcher(name).matches() || name.equals("value")) {
                entries.fault(
                    tree.place(),
                    "'" + name + "' is no name for a setting",
                    "small letters, digits and hyphens; 'value' is what the rule reports",
                    "swims-per-week");
              } else if (setting != null) {
                settings.put(name, setting);
              }
            });
    return settings;
  }

  /** Reads one, or null with a fault. */
  static Card.@Nullable Setting one(String name, @Nullable CardEntries entries) {
    if (entries == null) {
      return null;
    }
    entries.keys(KEYS, REQUIRED);
    String text = entries.text("value");
    String least = entries.text("from");
    String most = entries.text("to");
    if (text == null || least == null || most == null) {
      return null;
    }
    Settings.Value value = value(entries, "value", text);
    Settings.Value from = value(entries, "from", least);
    Settings.Value to = value(entries, "to", most);
    if (value == null || from == null || to == null) {
      return null;
    }
    boolean fromFits = alike(entries, "from", from, value);
    boolean toFits = alike(entries, "to", to, value);
    if (fromFits && toFits && !SettingValue.within(value, from, to)) {
      entries.fault(
          entries.place("value"), text + " is out of range", least + " to " + most, least);
    }
    return new Card.Setting(
        name,
        value,
        text,
        Objects.requireNonNullElse(entries.text("unit"), ""),
        from,
        to,
        Objects.requireNonNullElse(entries.text("meaning"), ""));
  }

  private static boolean alike(
      CardEntries entries, String key, Settings.Value end, Settings.Value value) {
    boolean day = value.kind() == Settings.Kind.WINDOW && end.kind() == Settings.Kind.DAY;
    if (end.kind() != value.kind() && !day) {
      entries.fault(
          entries.place(key),
          "'" + entries.text(key) + "' is of another kind than the value",
          SettingReader.words(value.kind()),
          "write value, from and to in one unit");
      return false;
    }
    return true;
  }

  /** The value a key is given, or null with a fault. */
  static Settings.@Nullable Value value(CardEntries entries, String key, String text) {
    Settings.Value value = SettingValue.of(text);
    if (value == null) {
      entries.fault(
          entries.place(key),
          "'" + text + "' is no value of a setting",
          "a number, share, time, distance, rate, day or window",
          "3, 75%, 1h45, 24km, 75g/h, D-21 or D-56..D-15");
    }
    return value;
  }
}
