package peakproof.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import peakproof.document.Dossier;
import peakproof.document.Fault;
import peakproof.document.House;
import peakproof.document.Place;
import peakproof.document.Plan;
import peakproof.document.Plan.SettingText;
import peakproof.fact.Settings;
import peakproof.fact.Standing;
import peakproof.measure.Constants;

/**
 * The rules as they count for one plan: shipped, then the preset's word, then the house's, then the
 * plan's.
 */
public final class Resolution {
  private static final String MEASURES = "measures";

  private static final String PRESET = "preset";
  private static final String HOUSE = "house";
  private static final String PLAN = "plan";

  private final Ruleset rules;
  private final Dossier dossier;
  private final Map<String, Map<String, Settings.Value>> values = new LinkedHashMap<>();
  private final Map<String, Double> measures = new TreeMap<>();
  private final Set<String> written = new TreeSet<>();
  private final Map<String, Severity> severities = new TreeMap<>();
  private final Map<String, Severity> atMost = new TreeMap<>();
  private final Map<String, Card> cards = new TreeMap<>();
  private final Set<String> inUse = new HashSet<>();
  private final Map<String, String> silenced = new TreeMap<>();
  private final List<Changed> overrides = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();
  private Chosen preset = new Chosen(Preset.DEFAULT, Preset.DEFAULT.because());

  /**
   * Something that preset, house or plan put in the place of what is shipped.
   *
   * @param by {@code preset}, {@code house} or {@code plan}
   * @param rule the rule, or {@code measures}
   * @param change the setting or severity with its new value
   * @param lowersHold true when a rule that can reach HOLD no longer does
   */
  public record Changed(String by, String rule, String change, boolean lowersHold) {}

  /**
   * The preset that counts for a plan.
   *
   * @param because why it does, in words
   */
  public record Chosen(Preset preset, String because) {}

  private Resolution(Ruleset rules, Dossier dossier) {
    this.rules = rules;
    this.dossier = dossier;
  }

  /** Applies house and plan to the rules; what neither knows is a fault with its place. */
  public static Resolution of(Ruleset rules, Dossier dossier) {
    Resolution resolved = new Resolution(rules, dossier);
    rules.cards().forEach(resolved::shipped);
    House house = dossier.house();
    if (house != null) {
      house.settings().forEach((rule, settings) -> resolved.apply(rule, settings, HOUSE));
      house.severity().forEach(resolved::severity);
      house.atMost().forEach(resolved::atMost);
      house.words().forEach(resolved::words);
      house.use().forEach(resolved::use);
      house.silenced().forEach(resolved::silence);
    }
    Plan plan = dossier.plan();
    plan.settings().forEach((rule, settings) -> resolved.apply(rule, settings, PLAN));
    plan.accepted().forEach(resolved::accepted);
    resolved.preset = resolved.chosen(plan.preset(), house == null ? null : house.preset());
    rules.presets().of(resolved.preset.preset()).forEach(resolved::preset);
    return resolved;
  }

  /** The same with one rule in use whatever its default, for the cases beside it. */
  public static Resolution trying(String rule, Ruleset rules, Dossier dossier) {
    Resolution resolved = of(rules, dossier);
    resolved.inUse.add(rule);
    return resolved;
  }

  private Chosen chosen(@Nullable String byPlan, @Nullable String byHouse) {
    String word = byPlan == null ? byHouse : byPlan;
    Preset chosen = Preset.of(word, Standing.of(dossier.plan(), constants()));
    return word == null || !word.equals(chosen.word())
        ? new Chosen(chosen, chosen.because())
        : new Chosen(chosen, byPlan == null ? "the house says so" : "the plan says so");
  }

  /** The preset goes where neither house nor plan has a word. */
  private void preset(String rule, Map<String, Presets.Difference> differences) {
    Map<String, Settings.Value> its = values.get(rule);
    differences.forEach(
        (name, difference) -> {
          if (its != null && !written.contains(rule + "/" + name)) {
            its.put(name, difference.value());
            overrides.add(new Changed(PRESET, rule, name + " " + difference.text(), false));
          }
        });
  }

  private void shipped(String rule, Card card) {
    Map<String, Settings.Value> its = new LinkedHashMap<>();
    card.settings().forEach((name, setting) -> its.put(name, setting.value()));
    values.put(rule, its);
    if (card.onByDefault()) {
      inUse.add(rule);
    }
  }

  private void apply(String rule, Map<String, SettingText> settings, String from) {
    if (rule.equals(MEASURES)) {
      settings.forEach((name, text) -> measure(name, text, from));
      return;
    }
    String slug = rules.slug(rule);
    if (slug == null) {
      settings.values().stream().findFirst().ifPresent(text -> unknown(parent(text.at()), rule));
      return;
    }
    settings.forEach((name, text) -> setting(slug, name, text, from));
  }

  private static String parent(String pointer) {
    return pointer.substring(0, pointer.lastIndexOf('/'));
  }

  private void setting(String rule, String name, SettingText text, String from) {
    if (name.equals("because")) {
      return;
    }
    Map<String, Card.Setting> known = rules.card(rule).settings();
    Settings.Value value = checked(known, name, text, rule);
    Map<String, Settings.Value> its = values.get(rule);
    if (value != null && its != null) {
      its.put(name, value);
      written.add(rule + "/" + name);
      overrides.add(new Changed(from, rule, name + " " + text.text(), false));
    }
  }

  private void measure(String name, SettingText text, String from) {
    if (name.equals("because")) {
      return;
    }
    Settings.Value value = checked(rules.measures().settings(), name, text, MEASURES);
    if (value != null) {
      measures.put(name, value.number());
      overrides.add(new Changed(from, MEASURES, name + " " + text.text(), false));
    }
  }

  private Settings.@Nullable Value checked(
      Map<String, Card.Setting> known, String name, SettingText text, String owner) {
    SettingCheck checked = SettingCheck.of(known, name, text.text(), owner);
    if (checked.trouble() != null) {
      faults.add(checked.trouble().at(dossier.positions().of(text.at())));
    }
    return checked.value();
  }

  private void severity(String rule, SettingText text) {
    Severity severity = word(rule, text);
    if (severity != null) {
      String slug = Objects.requireNonNull(rules.slug(rule));
      severities.put(slug, severity);
      tell(slug, "severity ", severity);
    }
  }

  private void atMost(String rule, SettingText text) {
    Severity severity = word(rule, text);
    if (severity != null) {
      String slug = Objects.requireNonNull(rules.slug(rule));
      atMost.put(slug, severity);
      tell(slug, "at most ", severity);
    }
  }

  private void tell(String slug, String change, Severity severity) {
    boolean lowered = rules.card(slug).canHold() && severity != Severity.HOLD;
    overrides.add(new Changed(HOUSE, slug, change + severity, lowered));
  }

  private @Nullable Severity word(String rule, SettingText text) {
    if (rules.slug(rule) == null) {
      unknown(text.at(), rule);
      return null;
    }
    Severity severity =
        List.of(Severity.values()).stream()
            .filter(each -> each.name().equals(text.text()))
            .findFirst()
            .orElse(null);
    if (severity == null) {
      fault(
          text.at(),
          "'" + text.text() + "' is no severity",
          "HOLD, FIX, ASK or NOTE",
          text.text().toUpperCase(Locale.ROOT));
    }
    return severity;
  }

  private void words(String rule, Map<String, SettingText> words) {
    String slug = rules.slug(rule);
    if (slug == null) {
      words.values().stream().findFirst().ifPresent(text -> unknown(parent(text.at()), rule));
      return;
    }
    Reworded reworded = Reworded.of(rules.card(slug), words);
    reworded
        .problems()
        .forEach((text, why) -> fault(text.at(), why.what(), why.expected(), why.instead()));
    if (reworded.problems().isEmpty()) {
      cards.put(slug, reworded.card());
      overrides.add(
          new Changed(HOUSE, slug, "words of " + String.join(", ", words.keySet()), false));
    }
  }

  private void use(SettingText entry) {
    String slug = rules.slug(entry.text());
    if (slug == null) {
      unknown(entry.at(), entry.text());
    } else if (inUse.add(slug)) {
      overrides.add(new Changed(HOUSE, slug, "turned on", false));
    }
  }

  private void silence(House.Silenced entry) {
    String slug = rules.slug(entry.rule());
    if (slug == null) {
      unknown(entry.at() + "/rule", entry.rule());
    } else {
      silenced.put(slug, entry.because());
    }
  }

  private void accepted(Plan.Accepted entry) {
    if (rules.slug(entry.rule()) == null) {
      unknown(entry.at() + "/rule", entry.rule());
    }
  }

  /** A rule that is broken is no mistake of the house, and is reported where it is broken. */
  private void unknown(String pointer, String rule) {
    if (rules.faults().isEmpty()) {
      fault(
          pointer,
          "there is no rule '" + rule + "'",
          "the name of a rule",
          Spelling.instead(rule, rules.names()));
    }
  }

  private void fault(String pointer, String what, String expected, String instead) {
    Place place = dossier.positions().of(pointer);
    faults.add(new Fault(place, what, expected, instead));
  }

  /** What is wrong in house and plan. */
  public List<Fault> faults() {
    return faults;
  }

  /** The settings of each rule that is judged. */
  public Map<String, Settings> settings() {
    Map<String, Settings> settings = new LinkedHashMap<>();
    values.forEach(
        (rule, its) -> {
          if (inUse.contains(rule) && !silenced.containsKey(rule)) {
            settings.put(rule, new Settings(rule, its));
          }
        });
    return settings;
  }

  /** The house's severity of a rule, or null when the card decides. */
  public @Nullable Severity severity(String rule) {
    return severities.get(rule);
  }

  /** The heaviest severity the house lets a rule come to, or null when it sets none. */
  public @Nullable Severity atMost(String rule) {
    return atMost.get(rule);
  }

  /** The card of a rule in the house's words. */
  public Card card(String rule) {
    return cards.getOrDefault(rule, rules.card(rule));
  }

  /** Rules turned off, with the reason. */
  public Map<String, String> silenced() {
    return silenced;
  }

  /** The preset that counts: the plan's, else the house's, else the one that fits the athlete. */
  public Chosen preset() {
    return preset;
  }

  /** What preset, house and plan changed. */
  public List<Changed> overrides() {
    return overrides;
  }

  /** The measures' constants as they count. */
  public Constants constants() {
    return rules.measures().changed(measures);
  }
}
