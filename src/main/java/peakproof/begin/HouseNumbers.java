package peakproof.begin;

import java.util.Map;
import java.util.Objects;
import peakproof.fact.Settings;
import peakproof.measure.DistanceClass;
import peakproof.rule.Card;
import peakproof.rule.Ruleset;

/** The rules' own numbers as they count for a plan, so that nothing is planned that they refuse. */
final class HouseNumbers {
  private final Ruleset rules;
  private final Map<String, Settings> inForce;

  HouseNumbers(Ruleset rules, Map<String, Settings> inForce) {
    this.rules = rules;
    this.inForce = inForce;
  }

  /** A number in the unit of {@link Settings}; a silenced rule's is the shipped one. */
  double of(String rule, String setting) {
    Settings settings = inForce.get(rule);
    if (settings != null) {
      return Objects.requireNonNull(settings.values().get(setting), setting).number();
    }
    Card.Setting shipped = rules.card(rule).settings().get(setting);
    return Objects.requireNonNull(shipped, setting).value().number();
  }

  double of(String rule, String setting, DistanceClass distance) {
    return of(rule, setting + distance.suffix());
  }
}
