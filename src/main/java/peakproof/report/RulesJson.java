package peakproof.report;

import java.io.IOException;
import java.util.List;
import peakproof.rule.Card;
import peakproof.rule.Origin;
import peakproof.rule.RuleInForce;

/** Rules as they count, for other programs; names and shape are a promise: additions only. */
public final class RulesJson {
  private RulesJson() {}

  /** The rules in the order given. */
  public static String of(List<RuleInForce> rules, String program) {
    return Json.of(
        json -> {
          json.count("format", 1);
          json.text("program", program);
          json.each("rules", rules, RulesJson::rule);
        });
  }

  private static void rule(Json json, RuleInForce rule) throws IOException {
    Card card = rule.card();
    json.text("rule", card.rule());
    json.text("theme", card.theme());
    json.text("title", card.title());
    json.text("severity", card.severity().name());
    json.text("heaviest", RuleWords.heaviest(rule).name());
    json.truth("on", rule.on());
    RuleInForce.Said silenced = rule.silenced();
    json.text("silenced", silenced == null ? null : silenced.what());
    json.text("grade", card.grade().word());
    json.texts("sources", card.sources());
    json.texts("needs", RuleWords.needs(card));
    json.each(
        "changes",
        rule.said(),
        (inner, said) -> {
          inner.text("what", said.what());
          origin(inner, said.origin());
        });
    json.each("settings", rule.settings(), RulesJson::setting);
    json.texts("was", card.was());
  }

  private static void setting(Json json, RuleInForce.Setting setting) throws IOException {
    json.text("name", setting.name());
    json.text("value", setting.text());
    json.text("shipped", setting.shipped().text());
    json.text("unit", setting.shipped().unit());
    json.text("range", RuleWords.range(setting.shipped()));
    json.text("meaning", setting.shipped().meaning());
    origin(json, setting.origin());
  }

  private static void origin(Json json, Origin origin) throws IOException {
    json.text("by", origin.by());
    json.text("file", origin.place().file());
    json.count("line", origin.place().line());
  }
}
