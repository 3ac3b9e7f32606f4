package peakproof.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import peakproof.bench.ByHand;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.rule.Case;

/** What the benchmark measures the rules against does the same work as the rules. */
class TwentyRulesTest {
  private final Auditor auditor = Shipped.auditor();
  private final TwentyRules twenty = new TwentyRules(auditor.rules());

  @Test
  void areTwenty() {
    assertThat(ByHand.rules()).hasSize(20);
    assertThat(auditor.rules().cards()).containsKeys(ByHand.rules().toArray(String[]::new));
  }

  @Test
  void findByHandWhatTheEngineFindsInEveryCaseOfTheirs() {
    Set<String> found = new TreeSet<>();
    List<String> differences = new ArrayList<>();
    for (String rule : ByHand.rules()) {
      for (Case one : auditor.rules().cases().getOrDefault(rule, List.of())) {
        TwentyRules.Ready ready = ready(one);
        Map<String, List<String>> byEngine = twenty.found(ready);
        Map<String, List<String>> byHand = TwentyRules.foundByHand(ready);
        found.addAll(byEngine.keySet());
        if (!byHand.equals(byEngine)) {
          differences.add(rule + ", " + one.name() + ": " + byEngine + " but by hand " + byHand);
        }
      }
    }
    assertThat(differences).isEmpty();
    assertThat(found).isEqualTo(ByHand.rules());
  }

  private TwentyRules.Ready ready(Case one) {
    Dossier dossier =
        Objects.requireNonNull(
            Documents.read("rules/base/plan.yaml", one.plan(), one.event(), one.log(), null)
                .dossier(),
            one.name());
    return twenty.ready(dossier, one.asOf());
  }
}
