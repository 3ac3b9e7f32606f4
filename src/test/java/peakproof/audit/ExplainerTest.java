package peakproof.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.kie.api.runtime.KieSession;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.fact.Fact;
import peakproof.fact.Facts;
import peakproof.fact.Settings;
import peakproof.fact.Window;
import peakproof.rule.Account;
import peakproof.rule.Case;
import peakproof.rule.Inquiry;
import peakproof.rule.Resolution;
import peakproof.rule.RuleSource;
import peakproof.rule.Ruleset;

/** The explanation of a verdict, held against the engine's own: over every case and demo plan. */
class ExplainerTest {
  private static Ruleset rules;
  private static final Map<String, RuleSource> SOURCES = new HashMap<>();

  @BeforeAll
  static void load() {
    rules = Auditor.load(List.of(Path.of("rules"))).rules();
    rules.cards().keySet().forEach(rule -> SOURCES.put(rule, RuleSource.of(rules, rule)));
  }

  @Test
  void agreesWithTheEngineOnEveryCase() {
    int tried = 0;
    int found = 0;
    for (List<Case> cases : rules.cases().values()) {
      for (Case one : cases) {
        Dossier dossier =
            Objects.requireNonNull(
                Documents.read("rules/base/plan.yaml", one.plan(), one.event(), one.log(), null)
                    .dossier());
        Resolution resolved = Resolution.trying(one.rule(), rules, dossier);
        Facts facts = facts(dossier, resolved, one.asOf());
        if (Applicability.notFor(rules.card(one.rule()), facts, dossier.plan()) == null) {
          found += compare(one.rule(), resolved, facts, one.rule() + ", " + one.name());
        }
        tried++;
      }
    }
    assertThat(tried).isGreaterThan(1500);
    assertThat(found).isGreaterThan(500);
  }

  @Test
  void agreesWithTheEngineOnEveryDemoPlan() {
    for (Path plan : Documents.plansUnder(Path.of("plans"))) {
      Dossier dossier = Objects.requireNonNull(Documents.read(plan, null).dossier());
      Resolution resolved = Resolution.of(rules, dossier);
      Facts facts = facts(dossier, resolved, Facts.lastKnownDay(dossier));
      for (String rule : resolved.settings().keySet()) {
        if (Applicability.notFor(rules.card(rule), facts, dossier.plan()) == null) {
          compare(rule, resolved, facts, rule + " on " + plan);
        }
      }
    }
  }

  private static Facts facts(Dossier dossier, Resolution resolved, LocalDate asOf) {
    return Facts.of(dossier, asOf, resolved.constants(), rules.waterTable());
  }

  /** Compares report with report; gives 1 when there is any. */
  private static int compare(String rule, Resolution resolved, Facts facts, String name) {
    Settings settings = Objects.requireNonNull(resolved.settings().get(rule));
    List<Window> windows = Judge.windows(facts, settings);
    List<Fact> all = new ArrayList<>(facts.all());
    all.addAll(windows);
    Reports reports = new Reports(100_000);
    KieSession session = rules.knowledge().get().newKieSession();
    session.setGlobal("findings", reports);
    all.forEach(session::insert);
    session.insert(settings);
    session.fireAllRules();
    session.dispose();
    Account account =
        Inquiry.of(Objects.requireNonNull(SOURCES.get(rule)), settings, all, Explainer.SPOKEN);
    assertThat(account.matches().stream().map(ExplainerTest::spelled).sorted().toList())
        .as(name)
        .isEqualTo(reports.of(rule).stream().map(ExplainerTest::spelled).sorted().toList());
    assertThat(account.looks()).as(name).isNotEmpty();
    return account.matches().isEmpty() ? 0 : 1;
  }

  /** The very same facts, told apart by their identity. */
  private static String spelled(Reports.Report report) {
    return spelled(report.fact(), report.because(), report.value());
  }

  private static String spelled(Account.Match match) {
    return spelled(match.fact(), match.because(), match.value());
  }

  private static String spelled(Object fact, Object because, Double value) {
    return System.identityHashCode(fact) + " " + System.identityHashCode(because) + " " + value;
  }
}
