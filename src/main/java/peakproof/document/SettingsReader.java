package peakproof.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads numbers of rules, which stay text until the rules are known. */
final class SettingsReader {
  private SettingsReader() {}

  /** The settings under {@code settings}, by rule and name. */
  static Map<String, Map<String, Plan.SettingText>> read(Fields owner, Desk desk) {
    Fields rules = owner.mapping("settings", "'settings'");
    if (rules == null) {
      return Map.of();
    }
    Map<String, Map<String, Plan.SettingText>> settings = new LinkedHashMap<>();
    rules
        .all()
        .forEach(
            (rule, node) -> {
              Fields values = desk.fields(node, "'" + rule + "'");
              if (values != null) {
                settings.put(rule, texts(values, desk));
              }
            });
    return Collections.unmodifiableMap(settings);
  }

  /** Every value of a mapping as text. */
  static Map<String, Plan.SettingText> texts(@Nullable Fields fields, Desk desk) {
    Map<String, Plan.SettingText> texts = new LinkedHashMap<>();
    if (fields != null) {
      fields
          .all()
          .forEach(
              (name, node) -> {
                String text = desk.value(node, Quantity.Of::new);
                if (text != null) {
                  texts.put(name, new Plan.SettingText(node.pointer(), text));
                }
              });
    }
    return Collections.unmodifiableMap(texts);
  }
}
