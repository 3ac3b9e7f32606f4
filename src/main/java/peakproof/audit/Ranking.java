package peakproof.audit;

import java.util.Comparator;
import java.util.List;
import peakproof.rule.Card;

/**
 * The order in which a coach reads: severity, the day it bites, theme with health first, rule,
 * place. Total, so that the same files give the same bytes.
 */
final class Ranking {
  private static final List<String> THEMES =
      List.of(
          "health",
          "environment",
          "race-rules",
          "integrity",
          "fuelling",
          "taper",
          "load",
          "intensity",
          "goal",
          "rehearsal",
          "swim",
          "bike",
          "run",
          "brick",
          "strength",
          "consistency");

  static final Comparator<Finding> ORDER =
      Comparator.comparing(Finding::severity)
          .thenComparing(Finding::bites)
          .thenComparing(finding -> theme(finding.theme()))
          .thenComparing(Finding::theme)
          .thenComparing(Finding::rule)
          .thenComparing(finding -> finding.where().get(0).place())
          .thenComparing(Finding::fingerprint);

  /** Rules by theme, then by name. */
  static final Comparator<Card> THEME_ORDER =
      Comparator.comparingInt((Card card) -> theme(card.theme()))
          .thenComparing(Card::theme)
          .thenComparing(Card::rule);

  private Ranking() {}

  /** A theme of the club's own comes after ours. */
  private static int theme(String theme) {
    int at = THEMES.indexOf(theme);
    return at < 0 ? THEMES.size() : at;
  }
}
