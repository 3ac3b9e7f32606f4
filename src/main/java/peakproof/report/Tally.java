package peakproof.report;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import peakproof.audit.Audit;
import peakproof.audit.Finding;
import peakproof.rule.Severity;

/**
 * How many rules ended how. A rule counts once, at its heaviest finding, so that the counts sum to
 * the rules even where one rule found several sore body parts.
 *
 * @param found rules that found something, by their heaviest finding; no entry stands for none
 * @param accepted rules whose every finding the coach accepted
 */
record Tally(
    Map<Severity, Integer> found,
    int clear,
    int notJudged,
    int notForThisPlan,
    int silenced,
    int accepted) {

  static Tally of(Audit audit) {
    Map<String, Severity> heaviest = new HashMap<>();
    for (Finding finding : audit.findings()) {
      heaviest.merge(
          finding.rule(), finding.severity(), (one, two) -> one.atLeast(two) ? one : two);
    }
    Map<Severity, Integer> found = new EnumMap<>(Severity.class);
    heaviest.values().forEach(severity -> found.merge(severity, 1, Integer::sum));
    Set<String> accepted = new HashSet<>();
    audit.accepted().forEach(entry -> accepted.add(entry.finding().rule()));
    accepted.removeAll(heaviest.keySet());
    return new Tally(
        found,
        audit.clear().size(),
        audit.notJudged().size(),
        audit.notForThisPlan().size(),
        audit.silenced().size(),
        accepted.size());
  }

  int found(Severity severity) {
    return found.getOrDefault(severity, 0);
  }

  int allFound() {
    return found.values().stream().mapToInt(Integer::intValue).sum();
  }

  int rules() {
    return allFound() + clear + notJudged + notForThisPlan + silenced + accepted;
  }

  /** Rules that came to an answer: found, clear or accepted. */
  int judged() {
    return allFound() + clear + accepted;
  }
}
