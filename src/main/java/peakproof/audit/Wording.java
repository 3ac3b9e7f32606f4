package peakproof.audit;

import java.lang.reflect.InvocationTargetException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Finding.Value;
import peakproof.fact.Fact;
import peakproof.fact.Settings;
import peakproof.rule.Card;
import peakproof.rule.Template;

/** Fills a card's texts with the values of one report. */
final class Wording {
  private final Settings settings;
  private final Card card;
  private final Map<String, Fact> facts = new LinkedHashMap<>();
  private final @Nullable Double value;
  private final Map<String, Value> shown = new LinkedHashMap<>();

  /**
   * Words for one report.
   *
   * @param single the facts there is one each of, which every text may name
   */
  Wording(Card card, Settings settings, Reports.Report report, List<Fact> single) {
    this.card = card;
    this.settings = settings;
    this.value = report.value();
    single.forEach(this::name);
    if (report.because() != null) {
      name(report.because());
    }
    name(report.fact());
  }

  /** Under its own name and that of what it is a kind of: a swim is a session. */
  private void name(Fact fact) {
    for (Class<?> kind = fact.getClass();
        Fact.class.isAssignableFrom(kind);
        kind = kind.getSuperclass()) {
      String type = kind.getSimpleName();
      facts.put(type.substring(0, 1).toLowerCase(Locale.ROOT) + type.substring(1), fact);
    }
  }

  /** What is held against a limit in the same text does not read like it. */
  String fill(Template template) {
    List<Value> limits =
        template.placeholders().stream().filter(this::isSetting).map(this::value).toList();
    return template.fill(placeholder -> text(placeholder, limits));
  }

  /** The values used so far, by placeholder. */
  Map<String, Value> values() {
    return shown;
  }

  private boolean isSetting(String placeholder) {
    return card.settings().containsKey(placeholder);
  }

  private String text(String placeholder, List<Value> limits) {
    Value found = value(placeholder);
    if (!isSetting(placeholder)) {
      found = Shown.apart(found, limits);
    }
    shown.put(placeholder, found);
    return found.text();
  }

  private Value value(String placeholder) {
    if (placeholder.equals("value")) {
      return reported();
    }
    int dot = placeholder.indexOf('.');
    if (dot < 0) {
      Card.Setting setting = card.settings().get(placeholder);
      Settings.Value effective = settings.values().get(placeholder);
      if (setting == null || effective == null) {
        throw new IllegalStateException(card.rule() + " has no setting " + placeholder);
      }
      return Shown.setting(effective, setting.unit());
    }
    Fact fact = facts.get(placeholder.substring(0, dot));
    return fact == null
        ? new Value(null, "unknown", "")
        : field(fact, placeholder.substring(dot + 1));
  }

  private Value reported() {
    Settings.Kind kind =
        card.steps().stream()
            .map(Card.Step::from)
            .filter(from -> from != null)
            .map(from -> from.kind())
            .findFirst()
            .orElse(Settings.Kind.COUNT);
    double number = value == null ? 0 : value;
    return Shown.setting(new Settings.Value(kind, number, number), "");
  }

  private static Value field(Fact fact, String name) {
    return Shown.field(name, read(fact, name));
  }

  /** The value of a fact's field; cards are checked to name only fields there are. */
  static @Nullable Object read(Fact fact, String name) {
    try {
      return fact.getClass().getMethod(name).invoke(fact);
    } catch (NoSuchMethodException | IllegalAccessException e) {
      throw new IllegalStateException("the card was checked, but has no " + name, e);
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(e.getCause());
    }
  }
}
