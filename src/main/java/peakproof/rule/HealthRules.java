package peakproof.rule;

import java.util.Locale;
import java.util.regex.Pattern;
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
   * True for such a rule.
   *
   * @param logic its file as written
   */
  static boolean isOne(Card card, String logic) {
    return Stream.concat(asked(logic), quoted(card)).distinct().anyMatch(HealthRules::isOfHealth);
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
