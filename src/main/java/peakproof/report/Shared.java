package peakproof.report;

import org.jspecify.annotations.Nullable;
import peakproof.rule.Severity;

/**
 * A rule that found something for several athletes.
 *
 * @param severity what it weighs for most of them, the heavier of two
 * @param title the problem
 * @param athletes how many
 * @param of how many were audited
 * @param message a draft to the squad, which names nobody; null for a health theme, and where the
 *     advice is not the same for all
 */
record Shared(
    String rule,
    String theme,
    Severity severity,
    String title,
    int athletes,
    int of,
    @Nullable String message) {
  /** Health entries stay with the coach: such a rule is counted, never told with names. */
  private static final String HEALTH = "health";

  boolean health() {
    return isHealth(theme);
  }

  static boolean isHealth(String theme) {
    return theme.equals(HEALTH);
  }

  /** {@code 37 of 112}. */
  String share() {
    return athletes + " of " + of;
  }
}
