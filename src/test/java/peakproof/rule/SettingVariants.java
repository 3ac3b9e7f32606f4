package peakproof.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import peakproof.fact.Settings;

/** Cards with one number moved by one unit, or one step taken away. */
final class SettingVariants {
  private SettingVariants() {}

  /** The variants of a card by what was done; what a card's own range refuses is none. */
  static Map<String, Card> of(Card card) {
    Map<String, Card> made = new LinkedHashMap<>();
    card.settings()
        .forEach(
            (name, setting) -> {
              for (Settings.Value value : nudged(setting.value(), setting.unit())) {
                if (SettingValue.within(value, setting.from(), setting.to())) {
                  made.put(name + " of " + text(value), with(card, setting, value));
                }
              }
            });
    for (int i = 0; i < card.steps().size(); i++) {
      Card.Step step = card.steps().get(i);
      List<Card.Step> rest = new ArrayList<>(card.steps());
      rest.remove(i);
      made.put("without step " + (i + 1), ChangedCard.of(card).steps(rest).in(card));
      if (step.from() != null) {
        for (Settings.Value value : nudged(step.from(), "")) {
          List<Card.Step> steps = new ArrayList<>(card.steps());
          steps.set(i, new Card.Step(value, null, step.severity()));
          made.put(
              "step " + (i + 1) + " from " + text(value),
              ChangedCard.of(card).steps(steps).in(card));
        }
      }
    }
    return made;
  }

  private static List<Settings.Value> nudged(Settings.Value value, String unit) {
    Settings.Kind kind = value.kind();
    double first = value.number();
    double last = value.until();
    if (kind == Settings.Kind.WINDOW) {
      return List.of(
          new Settings.Value(kind, first + 1, last),
          new Settings.Value(kind, first - 1, last),
          new Settings.Value(kind, first, last + 1),
          new Settings.Value(kind, first, last - 1));
    }
    double step = unit(kind, unit);
    return List.of(
        new Settings.Value(kind, first + step, first + step),
        new Settings.Value(kind, first - step, first - step));
  }

  /** The least change that somebody would write into a card. */
  private static double unit(Settings.Kind kind, String unit) {
    return switch (kind) {
      case SHARE -> 0.01;
      case DISTANCE -> unit.equals("km") ? 100 : 1;
      case FLUID -> 0.01;
      case COUNT, DURATION, TEMPERATURE, CARBOHYDRATE, DAY, WINDOW -> 1;
    };
  }

  private static String text(Settings.Value value) {
    String number = number(value.kind(), value.number());
    return value.kind() == Settings.Kind.WINDOW
        ? number + ".." + number(value.kind(), value.until())
        : number;
  }

  private static String number(Settings.Kind kind, double number) {
    return switch (kind) {
      case SHARE -> Math.round(number * 100) + "%";
      case DURATION -> Math.round(number) + "min";
      case DISTANCE -> Math.round(number) + "m";
      case DAY, WINDOW -> "D-" + Math.round(number);
      case COUNT, TEMPERATURE, CARBOHYDRATE -> "" + Math.round(number);
      case FLUID -> Math.round(number * 1000) + "ml/h";
    };
  }

  private static Card with(Card card, Card.Setting old, Settings.Value value) {
    Map<String, Card.Setting> settings = new LinkedHashMap<>(card.settings());
    settings.put(
        old.name(),
        new Card.Setting(
            old.name(), value, text(value), old.unit(), old.from(), old.to(), old.meaning()));
    return ChangedCard.of(card).settings(settings).in(card);
  }
}
