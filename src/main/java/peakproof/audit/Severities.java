package peakproof.audit;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.rule.Card;
import peakproof.rule.Hold;
import peakproof.rule.Resolution;
import peakproof.rule.Severity;

/** How much a report weighs: the card's severity and steps, the house's word, and our limits. */
final class Severities {
  private static final Set<String> BESPOKE = Set.of("pregnant", "post-partum");

  private final Resolution resolved;
  private final boolean bespoke;

  Severities(Resolution resolved, Plan plan) {
    this.resolved = resolved;
    this.bespoke = plan.athlete().health().conditions().stream().anyMatch(BESPOKE::contains);
  }

  Severity of(Card card, Reports.Report report) {
    Severity house = resolved.severity(card.rule());
    Severity severity = house == null ? stepped(card, report) : house;
    Severity most = resolved.atMost(card.rule());
    if (most != null && severity.atLeast(most)) {
      severity = most;
    }
    boolean estimated =
        report.fact().estimated() || report.because() != null && report.because().estimated();
    if (estimated && severity.atLeast(Severity.ASK)) {
      severity = Severity.ASK;
    }
    return bespoke && !standsForEveryone(card, severity) ? Severity.NOTE : severity;
  }

  /** A plan under a midwife or doctor is outside the rules but where someone could be hurt. */
  private static boolean standsForEveryone(Card card, Severity severity) {
    return severity == Severity.HOLD && (card.hold() == Hold.HURT || card.hold() == Hold.RULES);
  }

  private static Severity stepped(Card card, Reports.Report report) {
    Severity severity = card.severity();
    for (Card.Step step : card.steps()) {
      if (applies(step, report)) {
        severity = step.severity();
      }
    }
    return severity;
  }

  private static boolean applies(Card.Step step, Reports.Report report) {
    @Nullable String when = step.when();
    if (when != null) {
      return Boolean.TRUE.equals(Wording.read(report.fact(), when));
    }
    Double value = report.value();
    return step.from() != null && value != null && value > step.from().number() + 1e-9;
  }
}
