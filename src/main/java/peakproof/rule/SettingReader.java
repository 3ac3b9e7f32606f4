package peakproof.rule;

import java.util.Map;
import java.util.TreeMap;
import peakproof.fact.Settings.Kind;

/** The methods of the settings a rule may call, and the kind of setting each reads. */
final class SettingReader {
  static final Map<String, Kind> KINDS =
      new TreeMap<>(
          Map.of(
              "count", Kind.COUNT,
              "share", Kind.SHARE,
              "minutes", Kind.DURATION,
              "metres", Kind.DISTANCE,
              "km", Kind.DISTANCE,
              "celsius", Kind.TEMPERATURE,
              "carbohydrate", Kind.CARBOHYDRATE,
              "fluid", Kind.FLUID,
              "day", Kind.DAY));

  private SettingReader() {}

  /** How to read a setting of the kind. */
  static String of(Kind kind) {
    return switch (kind) {
      case COUNT -> "count";
      case SHARE -> "share";
      case DURATION -> "minutes";
      case DISTANCE -> "metres";
      case TEMPERATURE -> "celsius";
      case CARBOHYDRATE -> "carbohydrate";
      case FLUID -> "fluid";
      case DAY -> "day";
      case WINDOW -> "a Window fact";
    };
  }

  /** The kind in plain words with an example of its spelling. */
  static String words(Kind kind) {
    return switch (kind) {
      case COUNT -> "a number such as 3";
      case SHARE -> "a share such as 75%";
      case DURATION -> "a duration such as 1h45";
      case DISTANCE -> "a distance such as 24km";
      case TEMPERATURE -> "a temperature such as 16C";
      case CARBOHYDRATE -> "a rate such as 75g/h";
      case FLUID -> "a rate such as 650ml/h";
      case DAY -> "a day such as D-21";
      case WINDOW -> "a window such as D-56..D-15";
    };
  }
}
