package peakproof.report;

import org.jspecify.annotations.Nullable;
import peakproof.rule.Severity;

/**
 * A rule that found something for several athletes.
 *
 * @param health true when it is found in health entries: those stay with the coach, so that it is
 *     counted and never told with names
 * @param severity what it weighs for most of them, the heavier of two
 * @param title the problem
 * @param athletes how many
 * @param of how many were audited
 * @param message a draft to the squad, which names nobody; null when it is of health, and where the
 *     advice is not the same for all
 */
record Shared(
    String rule,
    String theme,
    boolean health,
    Severity severity,
    String title,
    int athletes,
    int of,
    @Nullable String message) {
  /** {@code 37 of 112}. */
  String share() {
    return athletes + " of " + of;
  }
}
