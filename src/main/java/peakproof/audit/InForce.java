package peakproof.audit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Fault;
import peakproof.document.House;
import peakproof.document.Reading;
import peakproof.rule.Card;
import peakproof.rule.Layer;
import peakproof.rule.Preset;
import peakproof.rule.Resolution;
import peakproof.rule.RuleInForce;
import peakproof.rule.Ruleset;

/** The rules as they count for a plan, for a house, or as shipped, with who said what. */
public final class InForce {
  private final Ruleset rules;
  private final @Nullable Dossier dossier;
  private final @Nullable Resolution resolved;
  private final boolean plan;

  private InForce(
      Ruleset rules, @Nullable Dossier dossier, @Nullable Resolution resolved, boolean plan) {
    this.rules = rules;
    this.dossier = dossier;
    this.resolved = resolved;
    this.plan = plan;
  }

  /** What came of it. */
  public sealed interface Outcome {
    /** The rules as they count. */
    record Known(InForce rules) implements Outcome {}

    /** A document is wrong, or asks for what the rules do not have. */
    record Wrong(List<Fault> faults) implements Outcome {}
  }

  /** As the cards say, without any house. */
  public static InForce shipped(Ruleset rules) {
    return new InForce(rules, null, null, false);
  }

  /** As they count for a plan that is read and whose settings are sound. */
  static InForce of(Ruleset rules, Dossier dossier, Resolution resolved) {
    return new InForce(rules, dossier, resolved, true);
  }

  /** As they count for a plan, by its own house or another. */
  public static Outcome forPlan(Auditor auditor, Path plan, @Nullable Path house) {
    return of(auditor, Documents.read(plan, house), true);
  }

  /**
   * As they count by a house for any plan.
   *
   * @param base the sound plan beside the shipped rules, which changes nothing: without a plan
   *     there is nothing a house could be held against
   */
  public static Outcome forHouse(Auditor auditor, Path base, Path house) {
    return of(auditor, Documents.read(base, house), false);
  }

  private static Outcome of(Auditor auditor, Reading reading, boolean plan) {
    Dossier dossier = reading.dossier();
    if (dossier == null) {
      return new Outcome.Wrong(reading.faults());
    }
    Ruleset rules = auditor.rules(dossier);
    Resolution resolved = Resolution.of(rules, dossier);
    return resolved.faults().isEmpty()
        ? new Outcome.Known(new InForce(rules, dossier, resolved, plan))
        : new Outcome.Wrong(resolved.faults());
  }

  /** All of them, by name. */
  public Ruleset rules() {
    return rules;
  }

  /** One rule as it counts. */
  public RuleInForce of(String rule) {
    Card card = resolved == null ? rules.card(rule) : resolved.card(rule);
    return dossier == null
        ? RuleInForce.of(rules, card, List.of(), null, null)
        : RuleInForce.of(rules, card, layers(dossier), dossier.house(), dossier.positions());
  }

  /** Without a plan there is no athlete whom one would fit; a house may name one all the same. */
  private @Nullable Preset preset(@Nullable House house) {
    if (plan && resolved != null) {
      return resolved.preset().preset();
    }
    return house == null ? null : Preset.named(house.preset());
  }

  private List<Layer> layers(Dossier dossier) {
    List<Layer> layers = new ArrayList<>();
    House house = dossier.house();
    Preset preset = preset(house);
    if (preset != null) {
      layers.add(Layer.of(preset, rules.presets()));
    }
    if (house != null) {
      layers.add(Layer.of("house", house.settings(), dossier.positions()));
    }
    if (plan) {
      layers.add(Layer.of("plan", dossier.plan().settings(), dossier.positions()));
    }
    return layers;
  }

  /** All rules in the order a coach reads: themes as in a report, then by name. */
  public List<RuleInForce> all() {
    return new TreeMap<>(rules.cards())
        .values().stream().sorted(Ranking.THEME_ORDER).map(card -> of(card.rule())).toList();
  }
}
