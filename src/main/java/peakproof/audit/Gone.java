package peakproof.audit;

import java.util.Set;
import java.util.stream.Stream;
import peakproof.document.Place;
import peakproof.rule.Severity;

/**
 * An earlier finding, as far as it is told once it is found no more.
 *
 * @param place where it stood then
 * @param ofHealth true when it is for the coach only
 * @param now what became of its rule: {@code clear}, or why that is no good news
 */
public record Gone(
    String rule,
    Severity severity,
    String title,
    String fingerprint,
    Place place,
    boolean ofHealth,
    String now) {
  /** What is said of a rule that looked again and found nothing. */
  public static final String CLEAR = "clear";

  /** An earlier finding of which nobody knows yet what became. */
  public Gone(
      String rule,
      Severity severity,
      String title,
      String fingerprint,
      Place place,
      boolean ofHealth) {
    this(rule, severity, title, fingerprint, place, ofHealth, "no longer in a plan");
  }

  /** The same as an audit leaves it. */
  Gone in(Audit audit) {
    return new Gone(rule, severity, title, fingerprint, place, ofHealth, now(audit));
  }

  /** A rule that still finds something else found less than before. */
  private String now(Audit audit) {
    if (audit.notJudged().stream().anyMatch(one -> one.rule().equals(rule))) {
      return "no longer judged";
    }
    if (audit.silenced().stream().anyMatch(one -> one.rule().equals(rule))) {
      return "silenced";
    }
    if (audit.notForThisPlan().stream().anyMatch(one -> one.rule().equals(rule))) {
      return "no longer for this plan";
    }
    boolean judged =
        audit.clear().contains(rule)
            || Stream.concat(
                    audit.findings().stream(),
                    audit.accepted().stream().map(Audit.AcceptedFinding::finding))
                .anyMatch(one -> one.rule().equals(rule));
    return judged ? CLEAR : "no longer a rule";
  }

  /** What an audit found. */
  static Gone of(Finding finding, Audit audit) {
    return new Gone(
        finding.rule(),
        finding.severity(),
        finding.title(),
        finding.fingerprint(),
        finding.where().get(0).place(),
        audit.ofHealth().contains(finding.rule()));
  }

  /**
   * The same, for readers who have no business with an athlete's health.
   *
   * @param more rules that are known now to be about health
   */
  public Gone discreet(Set<String> more) {
    return ofHealth || more.contains(rule)
        ? new Gone(Discreet.RULE, severity, Discreet.TITLE, Discreet.RULE, place, true, now)
        : this;
  }
}
