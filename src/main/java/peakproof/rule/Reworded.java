package peakproof.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan.SettingText;

/**
 * A card in the club's own words. Its numbers and conditions stay; a caution can be put in other
 * words, but not taken away.
 *
 * @param problems what is wrong with the words; the card is the shipped one then
 */
record Reworded(Card card, Map<SettingText, Problem> problems) {
  private static final int LONGEST_TITLE = 60;

  /** What is wrong with a text. */
  record Problem(String what, String expected, String instead) {}

  static Reworded of(Card card, Map<String, SettingText> words) {
    Map<SettingText, Problem> problems = new LinkedHashMap<>();
    words.forEach(
        (key, text) -> {
          Problem problem = problem(card, key, text.text());
          if (problem != null) {
            problems.put(text, problem);
          }
        });
    return problems.isEmpty()
        ? new Reworded(reworded(card, words), problems)
        : new Reworded(card, problems);
  }

  private static @Nullable Problem problem(Card card, String key, String text) {
    if (key.equals("title") && text.length() > LONGEST_TITLE) {
      return new Problem(
          "this title has " + text.length() + " letters",
          "at most " + LONGEST_TITLE,
          "say the trouble in fewer words; the rest belongs under 'why'");
    }
    if (key.equals("care") && text.equals("none") && card.care() != null) {
      return new Problem(
          "the caution of " + card.rule() + " cannot be taken away",
          "words of your own for it",
          "leave the line out to keep the shipped caution");
    }
    Set<String> known = placeholders(card);
    for (String name : new Template(text).placeholders()) {
      if (!known.contains(name)) {
        return new Problem(
            "'{" + name + "}' is no placeholder of " + card.rule(),
            "one of: " + String.join(", ", known),
            Spelling.instead(name, known));
      }
    }
    return null;
  }

  /** Its settings, and what its own texts name. */
  private static Set<String> placeholders(Card card) {
    Set<String> names = new TreeSet<>(card.settings().keySet());
    List<Template> texts = new ArrayList<>(List.of(card.why(), card.remedy()));
    if (card.care() != null) {
      texts.add(card.care());
    }
    texts.forEach(text -> names.addAll(text.placeholders()));
    return names;
  }

  private static Card reworded(Card card, Map<String, SettingText> words) {
    return card.inWords(
        text(words, "title", card.title()),
        new Template(text(words, "why", card.why().text())),
        new Template(text(words, "do", card.remedy().text())),
        care(card, words),
        words.containsKey("not-for") ? text(words, "not-for", "") : card.notFor());
  }

  private static @Nullable Template care(Card card, Map<String, SettingText> words) {
    String text = text(words, "care", "none");
    return text.equals("none") ? card.care() : new Template(text);
  }

  private static String text(Map<String, SettingText> words, String key, String otherwise) {
    SettingText text = words.get(key);
    return text == null ? otherwise : text.text();
  }
}
