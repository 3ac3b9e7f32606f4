package peakproof.audit;

import java.util.Objects;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.rule.Case;
import peakproof.rule.Resolution;

/** What a rule says of one of its own cases. */
public final class CaseFindings {
  private CaseFindings() {}

  /** The finding of the case's own rule. */
  public static Finding of(Auditor auditor, Case wrong) {
    Dossier dossier =
        Objects.requireNonNull(
            Documents.read("rules/base/plan.yaml", wrong.plan(), wrong.event(), wrong.log(), null)
                .dossier(),
            wrong.name());
    Resolution resolved = Resolution.trying(wrong.rule(), auditor.rules(), dossier);
    Auditor.Outcome outcome = auditor.audit(dossier, resolved, wrong.asOf());
    return ((Auditor.Outcome.Judged) outcome)
        .audit().findings().stream()
            .filter(finding -> finding.rule().equals(wrong.rule()))
            .findFirst()
            .orElseThrow();
  }
}
