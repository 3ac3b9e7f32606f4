package peakproof.rule;

import java.util.List;
import java.util.Map;

/** A card as it is but for what decides whether its rule reports, and how heavily. */
record ChangedCard(
    Map<String, Card.Setting> settings,
    List<Card.Step> steps,
    Card.Applies applies,
    List<Card.Need> needs,
    boolean judgesAbsence) {

  static ChangedCard of(Card card) {
    return new ChangedCard(
        card.settings(), card.steps(), card.applies(), card.needs(), card.judgesAbsence());
  }

  ChangedCard settings(Map<String, Card.Setting> other) {
    return new ChangedCard(other, steps, applies, needs, judgesAbsence);
  }

  ChangedCard steps(List<Card.Step> other) {
    return new ChangedCard(settings, other, applies, needs, judgesAbsence);
  }

  ChangedCard applies(Card.Applies other) {
    return new ChangedCard(settings, steps, other, needs, judgesAbsence);
  }

  ChangedCard needs(List<Card.Need> other) {
    return new ChangedCard(settings, steps, applies, other, judgesAbsence);
  }

  ChangedCard judgesAbsence(boolean other) {
    return new ChangedCard(settings, steps, applies, needs, other);
  }

  /** The card with all else as on the one it was made of. */
  Card in(Card card) {
    return new Card(
        card.rule(),
        card.theme(),
        card.title(),
        card.severity(),
        steps,
        card.hold(),
        card.grade(),
        card.sources(),
        applies,
        needs,
        judgesAbsence,
        card.fromDay(),
        card.onByDefault(),
        settings,
        card.why(),
        card.remedy(),
        card.care(),
        card.notFor(),
        card.was());
  }
}
