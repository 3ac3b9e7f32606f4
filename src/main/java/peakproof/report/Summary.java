package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import peakproof.audit.Audit;
import peakproof.report.Report.Judgement;
import peakproof.rule.Severity;

/** One line over all plans of a run: how many stop at which word, and who must not be sent. */
final class Summary {
  private Summary() {}

  static String of(Report report) {
    List<String> parts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      List<String> athletes =
          report.judgements().stream()
              .map(Judgement::audit)
              .filter(audit -> heaviest(audit).equals(Optional.of(severity)))
              .map(Audit::athlete)
              .toList();
      if (!athletes.isEmpty()) {
        String names = severity == Severity.HOLD ? " (" + String.join(", ", athletes) + ")" : "";
        parts.add(severity + " in " + athletes.size() + names);
      }
    }
    long without =
        report.judgements().stream().filter(one -> heaviest(one.audit()).isEmpty()).count();
    if (without > 0) {
      parts.add("nothing found in " + without);
    }
    int notAudited = report.plans() - report.judgements().size();
    if (notAudited > 0) {
      parts.add(notAudited + " not audited");
    }
    return report.plans()
        + " plans, each at its worst: "
        + Lines.dotted(parts.stream().map(Lines::bound).toList());
  }

  private static Optional<Severity> heaviest(Audit audit) {
    return audit.findings().stream().map(finding -> finding.severity()).min(Severity::compareTo);
  }
}
