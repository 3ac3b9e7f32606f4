package peakproof.audit;

import java.util.Objects;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.fact.Facts;
import peakproof.rule.Case;
import peakproof.rule.Resolution;
import peakproof.rule.Ruleset;

/** A case whose documents are read and measured once, to be tried on many sets of rules. */
public final class Trial {
  private final Case tried;
  private final Dossier dossier;
  private final Facts facts;

  private Trial(Case tried, Dossier dossier, Facts facts) {
    this.tried = tried;
    this.dossier = dossier;
    this.facts = facts;
  }

  /** Reads a case that can be read. */
  public static Trial of(Case tried, Ruleset rules) {
    Dossier dossier =
        Objects.requireNonNull(
            Documents.read("rules/base/plan.yaml", tried.plan(), tried.event(), tried.log(), null)
                .dossier(),
            tried.name());
    Facts facts =
        Facts.of(
            dossier, tried.asOf(), Resolution.of(rules, dossier).constants(), rules.waterTable());
    return new Trial(tried, dossier, facts);
  }

  /** True when the audit with these rules is what the case asks for. */
  public boolean passes(Ruleset rules) {
    Resolution resolved = Resolution.trying(tried.rule(), rules, dossier);
    Audit audit = new Assembly(rules, dossier, resolved, facts, tried.asOf()).audit();
    return Cases.differences(tried, audit).isEmpty();
  }
}
