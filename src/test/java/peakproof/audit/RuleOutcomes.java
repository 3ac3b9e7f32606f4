package peakproof.audit;

import java.util.Map;
import java.util.TreeMap;

/** What an audit says of each rule, in a few words that can be compared. */
final class RuleOutcomes {
  private RuleOutcomes() {}

  static Map<String, String> of(Audit audit) {
    Map<String, String> outcomes = new TreeMap<>();
    audit
        .findings()
        .forEach(
            finding ->
                outcomes.merge(
                    finding.rule(),
                    "found: " + finding.severity() + ", " + finding.why(),
                    (one, other) -> one + " | " + other));
    audit.clear().forEach(rule -> outcomes.put(rule, "clear"));
    audit.notJudged().forEach(rule -> outcomes.put(rule.rule(), "not judged: " + rule.missing()));
    audit
        .notForThisPlan()
        .forEach(rule -> outcomes.put(rule.rule(), "not for this plan: " + rule.because()));
    audit.silenced().forEach(rule -> outcomes.put(rule.rule(), "silenced: " + rule.because()));
    return outcomes;
  }
}
