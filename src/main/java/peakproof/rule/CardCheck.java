package peakproof.rule;

import java.util.Set;
import java.util.regex.Pattern;

/** What a card must be as a whole, once its entries are read. */
final class CardCheck {
  private static final int TITLE = 60;

  /** Themes in which every rule has a caution, whatever it weighs. */
  static final Set<String> CARING = Set.of("health", "environment", "fuelling");

  private static final Set<String> TEXTS = Set.of("title", "why", "do", "care", "not-for");
  private static final Pattern PAIRED_BRACES = Pattern.compile("[^{}]*(\\{[^{}]*\\}[^{}]*)*");

  private final Card card;
  private final CardEntries entries;

  private CardCheck(Card card, CardEntries entries) {
    this.card = card;
    this.entries = entries;
  }

  static void check(Card card, CardEntries entries) {
    CardCheck check = new CardCheck(card, entries);
    TEXTS.forEach(check::braces);
    check.name();
    check.title();
    check.source();
    check.hold();
    check.care();
    check.fromDay();
  }

  private void braces(String key) {
    String text = entries.text(key);
    if (text != null && !PAIRED_BRACES.matcher(text).matches()) {
      fault(
          key,
          "a brace in '" + key + "' stands alone",
          "placeholders such as {week.label}",
          "close it, or take it out");
    }
  }

  private void name() {
    String named = entries.text("rule");
    if (named != null && !named.equals(card.rule())) {
      fault("rule", "the card is of '" + named + "'", "its file's name", card.rule());
    }
  }

  private void title() {
    int length = card.title().codePointCount(0, card.title().length());
    if (length > TITLE) {
      fault(
          "title",
          "the title has " + length + " characters",
          "at most " + TITLE,
          "say the problem shorter");
    }
  }

  private void source() {
    if (card.grade().needsSource() && card.sources().isEmpty()) {
      fault(
          "grade",
          "the grade '" + card.grade().word() + "' has no source",
          "author, year, journal under 'sources'",
          "expert-practice or common-practice, if there is none");
    }
  }

  private void hold() {
    boolean weighed = CardReader.severity(entries.tree("severity")) != null;
    boolean reasoned = card.hold() != null || "none".equals(entries.text("hold"));
    if (weighed && reasoned && card.canHold() != (card.hold() != null)) {
      fault(
          "hold",
          card.canHold()
              ? "a rule that can HOLD must say why"
              : "a rule that cannot HOLD says none",
          "hurt, rules, cannot-be-right or none",
          card.canHold() ? "hurt" : "none");
    }
  }

  private void care() {
    boolean holds = card.canHold() && card.hold() != Hold.CANNOT_BE_RIGHT;
    if (card.care() == null && (holds || CARING.contains(card.theme()))) {
      fault(
          "care",
          "no caution",
          "a caution for whoever stands by the athlete",
          "name the stop signs and who decides");
    }
  }

  private void fromDay() {
    if (card.fromDay() != null && !card.judgesAbsence()) {
      fault(
          "from-day",
          "'from-day' is for rules that judge an absence",
          "'judges-absence: yes' beside it",
          "take it out");
    }
  }

  /** A key that is missing is a fault of its own. */
  private void fault(String key, String what, String expected, String instead) {
    if (entries.tree(key) != null) {
      entries.fault(entries.place(key), what, expected, instead);
    }
  }
}
