package peakproof.audit;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Explanation.Outcome;
import peakproof.audit.Explanation.Verdict;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Reading;
import peakproof.fact.Fact;
import peakproof.fact.Facts;
import peakproof.fact.Settings;
import peakproof.rule.Account;
import peakproof.rule.Inquiry;
import peakproof.rule.Resolution;
import peakproof.rule.RuleSource;
import peakproof.rule.Ruleset;
import peakproof.rule.Spoken;

/** Explains what one rule makes of one plan. */
public final class Explainer {
  private final Auditor auditor;
  private final String rule;

  /**
   * @param rule the name of a rule that can run
   */
  public Explainer(Auditor auditor, String rule) {
    this.auditor = auditor;
    this.rule = rule;
  }

  /** Judges the plan and tells how the rule came to its verdict; one that is off is tried. */
  public Outcome explain(Path plan, Auditor.Options options) {
    Reading reading = Documents.read(plan, options.house());
    Dossier dossier = reading.dossier();
    if (dossier == null) {
      return new Outcome.Wrong(reading.faults());
    }
    Ruleset rules = auditor.rules(dossier);
    Resolution resolved = Resolution.trying(rule, rules, dossier);
    Auditor.Outcome outcome = auditor.audit(rules, dossier, resolved, options.asOf());
    if (outcome instanceof Auditor.Outcome.Wrong wrong) {
      return new Outcome.Wrong(wrong.faults());
    }
    if (outcome instanceof Auditor.Outcome.Stopped stopped) {
      return new Outcome.Wrong(List.of(stopped.rule()));
    }
    Audit audit = ((Auditor.Outcome.Judged) outcome).audit();
    InForce inForce = InForce.of(rules, dossier, resolved);
    return new Outcome.Explained(
        new Explanation(
            inForce.of(rule),
            audit,
            verdict(audit),
            account(rules, dossier, resolved, audit.asOf()),
            dossier.positions()));
  }

  private Verdict verdict(Audit audit) {
    for (Audit.Silenced silenced : audit.silenced()) {
      if (silenced.rule().equals(rule)) {
        return new Verdict.Silenced(silenced.because());
      }
    }
    for (Audit.NotJudged unjudged : audit.notJudged()) {
      if (unjudged.rule().equals(rule)) {
        return new Verdict.NotJudged(unjudged.missing());
      }
    }
    for (Audit.NotFor other : audit.notForThisPlan()) {
      if (other.rule().equals(rule)) {
        return new Verdict.NotFor(other.because());
      }
    }
    List<Finding> found =
        audit.findings().stream().filter(finding -> finding.rule().equals(rule)).toList();
    List<Audit.AcceptedFinding> accepted =
        audit.accepted().stream().filter(one -> one.finding().rule().equals(rule)).toList();
    return found.isEmpty() && accepted.isEmpty()
        ? new Verdict.Clear()
        : new Verdict.Found(found, accepted);
  }

  private @Nullable Account account(
      Ruleset rules, Dossier dossier, Resolution resolved, LocalDate day) {
    Settings settings = resolved.settings().get(rule);
    if (settings == null) {
      return null;
    }
    Facts facts = Facts.of(dossier, day, resolved.constants(), rules.waterTable());
    return account(RuleSource.of(rules, rule), settings, facts);
  }

  /** What a rule looks at among the facts. */
  static Account account(RuleSource source, Settings settings, Facts facts) {
    List<Fact> all = new ArrayList<>(facts.all());
    all.addAll(Judge.windows(facts, settings));
    return Inquiry.of(source, settings, all, SPOKEN);
  }

  static final Spoken SPOKEN =
      new Spoken() {
        @Override
        public String field(String name, @Nullable Object value) {
          return Shown.field(name, value).text();
        }

        @Override
        public String exact(String name, double value) {
          return Shown.exact(name, value);
        }

        @Override
        public String setting(Settings.Value value) {
          return Shown.setting(value, "").text();
        }
      };
}
