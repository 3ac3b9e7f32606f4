package peakproof.audit;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import peakproof.document.Dossier;
import peakproof.document.Plan;
import peakproof.document.Plan.Accepted;
import peakproof.fact.Facts;
import peakproof.fact.Settings;
import peakproof.rule.Card;
import peakproof.rule.Resolution;
import peakproof.rule.Ruleset;

/** Puts the outcomes of all rules together into the audit of one plan. */
final class Assembly {
  private final Ruleset rules;
  private final Dossier dossier;
  private final Resolution resolved;
  private final Map<String, Settings> settings;
  private final Facts facts;
  private final LocalDate asOf;
  private final Acceptance acceptance;
  private final Severities severities;

  private final List<Finding> findings = new ArrayList<>();
  private final List<String> clear = new ArrayList<>();
  private final List<Audit.NotJudged> notJudged = new ArrayList<>();
  private final List<Audit.NotFor> notFor = new ArrayList<>();
  private final List<Audit.AcceptedFinding> accepted = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  Assembly(Ruleset rules, Dossier dossier, Resolution resolved, Facts facts, LocalDate asOf) {
    this.rules = rules;
    this.dossier = dossier;
    this.resolved = resolved;
    this.settings = resolved.settings();
    this.facts = facts;
    this.asOf = asOf;
    this.acceptance = new Acceptance(dossier.plan().accepted(), asOf, dossier.positions());
    this.severities = new Severities(resolved, dossier.plan());
  }

  Audit audit(Watchdog watchdog) throws RunawayRule {
    Judge judge = new Judge(rules, dossier.plan(), facts, settings, watchdog);
    Composer composer = new Composer(dossier, facts.single(), severities);
    Map<String, Judge.Outcome> outcomes = judge.judge();
    outcomes.forEach((rule, outcome) -> sort(resolved.card(rule), outcome, composer));
    findings.sort(Ranking.ORDER);
    remarks.addAll(acceptance.remarks());
    remarks.addAll(Footer.gaps(dossier.plan(), asOf));
    remarks.addAll(Footer.cautions(dossier.plan(), rules.cautions()));
    Plan plan = dossier.plan();
    Set<String> ofHealth = new TreeSet<>(rules.ofHealth());
    outcomes.forEach((rule, outcome) -> noteHealth(rule, outcome, ofHealth));
    return new Audit(
        slashes(dossier.planFile()),
        dossier.logFile() == null ? null : slashes(dossier.logFile()),
        plan.athlete().name(),
        plan.event().name(),
        plan.event().date(),
        asOf,
        facts.logEnds(),
        Footer.shape(facts),
        List.copyOf(findings),
        List.copyOf(clear),
        List.copyOf(notJudged),
        List.copyOf(notFor),
        silenced(),
        List.copyOf(accepted),
        resolved.preset(),
        resolved.overrides(),
        Footer.notDeclared(plan),
        List.copyOf(remarks),
        ofHealth);
  }

  static String slashes(Path path) {
    return path.toString().replace('\\', '/');
  }

  /** A finding that stands in a health entry quotes it, whatever the rule looks at. */
  private static void noteHealth(String rule, Judge.Outcome outcome, Set<String> ofHealth) {
    if (outcome instanceof Judge.Outcome.Found found
        && found.reports().stream()
            .flatMap(report -> Stream.of(report.fact(), report.because()))
            .filter(Objects::nonNull)
            .flatMap(fact -> fact.where().stream())
            .anyMatch(HealthEntry::isOne)) {
      ofHealth.add(rule);
    }
  }

  private void sort(Card card, Judge.Outcome outcome, Composer composer) {
    if (outcome instanceof Judge.Outcome.Found found) {
      found(card, found, composer);
    } else if (outcome instanceof Judge.Outcome.NotJudged unjudged) {
      notJudged.add(new Audit.NotJudged(card.rule(), unjudged.missing(), card.canHold()));
    } else if (outcome instanceof Judge.Outcome.NotFor other) {
      notFor.add(new Audit.NotFor(card.rule(), other.because()));
    } else {
      clear.add(card.rule());
    }
  }

  /**
   * What is accepted goes apart; when something of the rule still stands, only a remark is left.
   */
  private void found(Card card, Judge.Outcome.Found found, Composer composer) {
    Settings counting = Objects.requireNonNull(settings.get(card.rule()));
    List<Reports.Report> standing = new ArrayList<>();
    List<Reports.Report> livedWith = new ArrayList<>();
    Accepted entry = null;
    for (Reports.Report report : found.reports()) {
      Accepted its = acceptance.of(card, severities.of(card, report), report.fact().where());
      entry = its == null ? entry : its;
      (its == null ? standing : livedWith).add(report);
    }
    if (!standing.isEmpty()) {
      findings.addAll(composer.compose(card, counting, standing, found.open()));
    }
    if (entry == null) {
      return;
    }
    if (!standing.isEmpty()) {
      remarks.add(card.rule() + " is accepted in part: " + entry.because());
      return;
    }
    for (Finding finding : composer.compose(card, counting, livedWith, found.open())) {
      accepted.add(new Audit.AcceptedFinding(finding, entry.because(), entry.by(), entry.until()));
    }
  }

  private List<Audit.Silenced> silenced() {
    List<Audit.Silenced> silenced = new ArrayList<>();
    resolved
        .silenced()
        .forEach(
            (rule, because) ->
                silenced.add(new Audit.Silenced(rule, because, rules.card(rule).canHold())));
    return silenced;
  }
}
