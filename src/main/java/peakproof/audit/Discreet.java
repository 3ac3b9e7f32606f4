package peakproof.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import peakproof.audit.Audit.AcceptedFinding;

/**
 * An audit for readers who have no business with an athlete's health. Of a finding in a health
 * entry they get severity, file and line, and no word of what the entry says: neither the rule's
 * name, which tells as much, nor a fingerprint from which the few body parts there are could be
 * guessed.
 */
public final class Discreet {
  /** Stands for every rule that reads health entries. */
  public static final String RULE = "health-entry";

  /** What is said in place of a finding's title. */
  public static final String TITLE = "A health entry needs the coach's eye";

  private static final String CARE =
      "Health entries stay with the coach; a licensed practitioner decides about health.";

  private final Audit audit;
  private int told;

  private Discreet(Audit audit) {
    this.audit = audit;
  }

  /** The audit without what rules make of health entries, but for where they stand. */
  public static Audit of(Audit audit) {
    return new Discreet(audit).audit();
  }

  private Audit audit() {
    List<Finding> findings = new ArrayList<>();
    audit.findings().forEach(finding -> findings.add(discreet(finding)));
    List<AcceptedFinding> accepted = new ArrayList<>();
    for (AcceptedFinding one : audit.accepted()) {
      boolean ofHealth = audit.ofHealth().contains(one.finding().rule());
      String because = ofHealth ? "accepted by the coach; the plan says why" : one.because();
      accepted.add(new AcceptedFinding(discreet(one.finding()), because, one.by(), one.until()));
    }
    return new Audit(
        audit.plan(),
        audit.log(),
        audit.athlete(),
        audit.event(),
        audit.raceDate(),
        audit.asOf(),
        audit.logEnds(),
        audit.shape(),
        List.copyOf(findings),
        others(audit.clear(), rule -> rule),
        others(audit.notJudged(), Audit.NotJudged::rule),
        others(audit.notForThisPlan(), Audit.NotFor::rule),
        others(audit.silenced(), Audit.Silenced::rule),
        List.copyOf(accepted),
        audit.preset(),
        audit.settings(),
        audit.notDeclared(),
        audit.remarks().stream()
            .filter(remark -> Acceptance.isRemark(remark, audit.ofHealth()))
            .toList(),
        audit.ofHealth());
  }

  private <T> List<T> others(List<T> all, Function<T, String> rule) {
    return all.stream().filter(one -> !audit.ofHealth().contains(rule.apply(one))).toList();
  }

  private Finding discreet(Finding finding) {
    if (!audit.ofHealth().contains(finding.rule())) {
      return finding;
    }
    String number = String.valueOf(++told);
    return new Finding(
        RULE,
        finding.severity(),
        finding.hold(),
        "health",
        TITLE,
        "What it says is not repeated here.",
        "Open the file at the line, or run the audit on your own machine.",
        CARE,
        finding.grade(),
        List.of(),
        Map.of(),
        finding.where(),
        Fingerprint.of(RULE, audit.athlete(), audit.raceDate(), number),
        finding.bites());
  }
}
