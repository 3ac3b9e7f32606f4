package peakproof.rule;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import peakproof.fact.Fact;
import peakproof.fact.OfHealth;

/**
 * Which rules find something in health entries: those that ask for a fact made of them, or whose
 * texts quote one. A fact that must not be there says nothing of anybody.
 */
final class HealthRules {
  private static final Pattern COMMENT = Pattern.compile("//[^\n]*|/\\*.*?\\*/", Pattern.DOTALL);
  private static final Pattern ABSENT = Pattern.compile("\\bnot\\b[\\s(]*[A-Z]\\w*\\s*\\(");
  private static final Pattern FACT = Pattern.compile("\\b([A-Z]\\w*)\\s*\\(");

  private HealthRules() {}

  /**
   * The rules that do.
   *
   * @param logic the rule files as written, by slug
   */
  static Set<String> among(Map<String, Card> cards, Map<String, String> logic) {
    Map<String, Boolean> known = new HashMap<>();
    return cards.values().stream()
        .filter(
            card ->
                Stream.concat(asked(logic.getOrDefault(card.rule(), "")), quoted(card))
                    .anyMatch(fact -> known.computeIfAbsent(fact, HealthRules::isOfHealth)))
        .map(Card::rule)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Stream<String> asked(String logic) {
    String conditions = ABSENT.matcher(COMMENT.matcher(logic).replaceAll("")).replaceAll("(");
    return FACT.matcher(conditions).results().map(match -> match.group(1));
  }

  private static Stream<String> quoted(Card card) {
    return Stream.of(card.why(), card.remedy(), card.care())
        .filter(text -> text != null)
        .flatMap(text -> text.placeholders().stream())
        .filter(placeholder -> placeholder.indexOf('.') > 0)
        .map(placeholder -> placeholder.substring(0, placeholder.indexOf('.')))
        .map(fact -> fact.substring(0, 1).toUpperCase(Locale.ROOT) + fact.substring(1));
  }

  private static boolean isOfHealth(String fact) {
    try {
      String name = Fact.class.getPackageName() + "." + fact;
      return Class.forName(name, false, Fact.class.getClassLoader())
          .isAnnotationPresent(OfHealth.class);
    } catch (ClassNotFoundException | NoClassDefFoundError noFact) {
      return false;
    }
  }
}
