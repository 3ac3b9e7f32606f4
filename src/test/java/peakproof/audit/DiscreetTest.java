package peakproof.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.rule.Case;
import peakproof.rule.Resolution;

/** What leaves the coach's desk, over every case of every rule. */
class DiscreetTest {
  /** Words of health entries that no other entry has; a card's own caution may well use some. */
  private static final Pattern CONTENT =
      Pattern.compile(
          "\\b(pain|achilles|shin|calf|knee|foot|hip|back|shoulder|fever|ill|illness|virus|stomach|"
              + "cough|froth|limp|swelling|sleep|slept|mood|fatigue|soreness|resting|injur\\w*|"
              + "painkiller|anti-inflammatory|diabetes|heart condition|weight-loss|fasted)\\b");

  private static final List<Audit> AUDITS = new ArrayList<>();

  @BeforeAll
  static void judgeEveryCase() {
    for (List<Case> cases : Shipped.auditor().rules().cases().values()) {
      for (Case each : cases) {
        Dossier dossier =
            Documents.read("rules/base/plan.yaml", each.plan(), each.event(), each.log(), null)
                .dossier();
        Resolution resolved = Resolution.trying(each.rule(), Shipped.auditor().rules(), dossier);
        if (Shipped.auditor().audit(dossier, resolved, each.asOf())
            instanceof Auditor.Outcome.Judged judged) {
          AUDITS.add(judged.audit());
        }
      }
    }
  }

  @Test
  void quotesNoHealthEntry() {
    Set<String> before = new TreeSet<>();
    for (Audit audit : AUDITS) {
      audit.findings().forEach(finding -> quoting(finding, before));
      Set<String> after = new TreeSet<>();
      Audit discreet = Discreet.of(audit);
      discreet.findings().forEach(finding -> quoting(finding, after));
      discreet.accepted().forEach(one -> quoting(one.finding(), after));
      assertThat(after).isEmpty();
    }
    assertThat(before).contains("run-pain-rule", "nsaid-planned", "weight-cut");
  }

  @Test
  void keepsSeverityPlaceAndOrderOfEveryFinding() {
    for (Audit audit : AUDITS) {
      Audit discreet = Discreet.of(audit);
      assertThat(discreet.findings()).hasSameSizeAs(audit.findings());
      for (int i = 0; i < audit.findings().size(); i++) {
        Finding is = discreet.findings().get(i);
        Finding was = audit.findings().get(i);
        assertThat(is.severity()).isEqualTo(was.severity());
        assertThat(is.where()).isEqualTo(was.where());
        if (audit.ofHealth().contains(was.rule())) {
          assertThat(is.rule()).isEqualTo(Discreet.RULE);
          assertThat(is.fingerprint()).isNotEqualTo(was.fingerprint());
        } else {
          assertThat(is).isEqualTo(was);
        }
      }
    }
  }

  @Test
  void isAboutTheRulesThatReadHealthEntriesAndNoOthers() {
    assertThat(Shipped.auditor().rules().ofHealth())
        .contains(
            "run-pain-rule",
            "ill-train-through",
            "return-after-virus-too-fast",
            "swim-breathing-symptom",
            "sleep-short",
            "emergency-contact-missing",
            "overreach-into-taper",
            "nsaid-planned",
            "run-hard-while-fatigued")
        .doesNotContain("swim-alone-open-water", "run-strides-taper", "taper-missing");
  }

  private static void quoting(Finding finding, Set<String> rules) {
    for (Finding.Value value : finding.values().values()) {
      if (CONTENT.matcher(value.text()).find()) {
        rules.add(finding.rule());
      }
    }
  }
}
