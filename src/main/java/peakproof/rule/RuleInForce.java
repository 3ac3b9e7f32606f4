package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.House;
import peakproof.document.Plan.SettingText;
import peakproof.document.Positions;

/**
 * One rule as it counts, and who said each part of that.
 *
 * @param card in the words of whoever had the last one
 * @param settings in the order of the card
 * @param said what the house says of it beside its settings, in the order of a house file
 * @param severity the house's, or null when the card decides
 * @param atMost the heaviest the house lets it come to, or null
 * @param on false when it judges nobody: off by default and not asked for, or silenced
 * @param silenced why the house turned it off, or null
 */
public record RuleInForce(
    Card card,
    RuleSource source,
    List<Setting> settings,
    List<Said> said,
    @Nullable Severity severity,
    @Nullable Severity atMost,
    boolean on,
    @Nullable Said silenced) {

  /**
   * A setting as it counts.
   *
   * @param text the value in the spelling of whoever set it
   * @param shipped what the card says of it
   */
  public record Setting(String name, String text, Origin origin, Card.Setting shipped) {
    /** True when somebody put another value in the place of the card's. */
    public boolean changed() {
      return !origin.by().equals(CARD);
    }
  }

  /** A word of the house about a rule: {@code severity ASK}, {@code at most FIX}, … */
  public record Said(String what, Origin origin) {}

  private static final String CARD = "card";
  private static final String HOUSE = "house";

  /** Every severity it can come to. */
  public Stream<Severity> severities() {
    Stream<Severity> own =
        severity != null
            ? Stream.of(severity)
            : Stream.concat(
                Stream.of(card.severity()), card.steps().stream().map(Card.Step::severity));
    return own.map(each -> atMost != null && each.atLeast(atMost) ? atMost : each);
  }

  /** True when anything but the card has a say in it. */
  public boolean changed() {
    return !said.isEmpty() || settings.stream().anyMatch(Setting::changed);
  }

  /**
   * A rule as it counts.
   *
   * @param card in the house's words
   * @param layers from the weakest to the strongest; without faults
   * @param house null when there is none
   */
  public static RuleInForce of(
      Ruleset rules,
      Card card,
      List<Layer> layers,
      @Nullable House house,
      @Nullable Positions positions) {
    RuleSource source = RuleSource.of(rules, card.rule());
    List<Setting> settings = new ArrayList<>();
    card.settings()
        .forEach((name, shipped) -> settings.add(setting(name, shipped, source, layers, rules)));
    List<Said> said = new ArrayList<>();
    Said silenced = null;
    Severity severity = null;
    Severity atMost = null;
    boolean on = card.onByDefault();
    if (house != null && positions != null) {
      HouseSays says = new HouseSays(rules, card.rule(), positions);
      severity = says.about(house.severity(), "severity ", said);
      atMost = says.about(house.atMost(), "at most ", said);
      says.words(house, said);
      Said used = says.used(house);
      if (used != null && !on) {
        said.add(used);
        on = true;
      }
      silenced = says.silenced(house);
    }
    return new RuleInForce(
        card, source, settings, said, severity, atMost, on && silenced == null, silenced);
  }

  private static Setting setting(
      String name, Card.Setting shipped, RuleSource source, List<Layer> layers, Ruleset rules) {
    Origin card = new Origin(CARD, source.place(CardSettings.PLACE + name));
    Setting now = new Setting(name, shipped.text(), card, shipped);
    for (Layer layer : layers) {
      Layer.Word word = layer.of(source.rule(), name, rules);
      if (word != null) {
        now = new Setting(name, word.text(), new Origin(layer.by(), word.place()), shipped);
      }
    }
    return now;
  }

  /** What a house says of one rule, under its name or a former one. */
  private record HouseSays(Ruleset rules, String rule, Positions positions) {
    private boolean isMeant(String name) {
      return rule.equals(rules.slug(name));
    }

    private Said said(String what, String pointer) {
      return new Said(what, new Origin(HOUSE, positions.of(pointer)));
    }

    /** Tells the severity that an entry gives the rule; null without one. */
    @Nullable Severity about(Map<String, SettingText> entries, String what, List<Said> said) {
      Severity given = null;
      for (Map.Entry<String, SettingText> entry : entries.entrySet()) {
        if (isMeant(entry.getKey())) {
          given = Severity.valueOf(entry.getValue().text());
          said.add(said(what + given, entry.getValue().at()));
        }
      }
      return given;
    }

    void words(House house, List<Said> said) {
      house
          .words()
          .forEach(
              (name, words) -> {
                if (isMeant(name)) {
                  words.forEach((key, text) -> said.add(said("words of " + key, text.at())));
                }
              });
    }

    @Nullable Said used(House house) {
      return house.use().stream()
          .filter(entry -> isMeant(entry.text()))
          .map(entry -> said("turned on", entry.at()))
          .findFirst()
          .orElse(null);
    }

    @Nullable Said silenced(House house) {
      Function<House.Silenced, Said> told = entry -> said(entry.because(), entry.at() + "/rule");
      return house.silenced().stream()
          .filter(entry -> isMeant(entry.rule()))
          .map(told)
          .findFirst()
          .orElse(null);
    }
  }
}
