package peakproof.report;

import org.jspecify.annotations.Nullable;
import peakproof.audit.Finding;
import peakproof.rule.Hold;
import peakproof.rule.Severity;

/**
 * A finding in one sentence.
 *
 * @param hold why it holds; null below HOLD
 */
record Headline(
    String rule,
    String theme,
    Severity severity,
    @Nullable Hold hold,
    String title,
    String fingerprint) {
  static Headline of(Finding finding) {
    return new Headline(
        finding.rule(),
        finding.theme(),
        finding.severity(),
        finding.hold(),
        finding.title(),
        finding.fingerprint());
  }
}
