package peakproof.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.rule.Case;

/** Every rule beside its cases, and the base document on which all are silent. */
class RuleCasesTest {
  private static final Path RULES = Path.of("rules");
  private static final LocalDate AS_OF = LocalDate.of(2027, 5, 30);
  private static Auditor auditor;

  @BeforeAll
  static void load() {
    auditor = Shipped.auditor();
  }

  @Test
  void shippedRulesHaveNoFault() {
    assertThat(auditor.ruleFaults()).isEmpty();
    assertThat(auditor.rules().cards()).hasSizeGreaterThanOrEqualTo(52);
  }

  @Test
  void everyCaseGivesWhatItAsksFor() {
    List<CaseResult> failed =
        Cases.run(auditor, RULES).stream().filter(result -> !result.ok()).toList();
    assertThat(failed).isEmpty();
  }

  @Test
  void everyRuleHasWrongFineAndUnsureCases() {
    auditor
        .rules()
        .cards()
        .forEach(
            (rule, card) -> {
              var byKind =
                  auditor.rules().cases().getOrDefault(rule, List.of()).stream()
                      .collect(Collectors.groupingBy(Case::expectation, Collectors.counting()));
              assertThat(byKind.getOrDefault(Case.Expectation.WRONG, 0L))
                  .as(rule)
                  .isGreaterThanOrEqualTo(2);
              assertThat(byKind.getOrDefault(Case.Expectation.FINE, 0L))
                  .as(rule)
                  .isGreaterThanOrEqualTo(3);
              if (!card.needs().isEmpty()) {
                assertThat(byKind.getOrDefault(Case.Expectation.UNSURE, 0L)).as(rule).isPositive();
              }
            });
  }

  @Test
  void staysSilentOnTheBaseDocument() {
    Audit audit = base(AS_OF);
    assertThat(audit.findings()).isEmpty();
    assertThat(audit.notJudged()).isEmpty();
  }

  @Test
  void givesTheSameAuditTwice() {
    assertThat(base(AS_OF)).isEqualTo(base(AS_OF));
  }

  @Test
  void judgesTheUnwrittenWeeksLater(@TempDir Path folder) throws IOException {
    String plan = Files.readString(Path.of("rules/base/plan.yaml"), StandardCharsets.UTF_8);
    int third = plan.indexOf("    - starts: 2027-06-14");
    String cut = plan.substring(0, third) + plan.substring(plan.indexOf("  race-day:"));
    Files.writeString(folder.resolve("plan.yaml"), cut, StandardCharsets.UTF_8);
    Files.copy(Path.of("rules/base/log.yaml"), folder.resolve("log.yaml"));
    Files.copy(Path.of("rules/base/event.yaml"), folder.resolve("event.yaml"));
    Auditor.Outcome outcome =
        auditor.audit(folder.resolve("plan.yaml"), new Auditor.Options(AS_OF, null));
    Audit audit = ((Auditor.Outcome.Judged) outcome).audit();
    assertThat(audit.findings()).isEmpty();
    assertThat(audit.notJudged()).isNotEmpty();
  }

  private static Audit base(LocalDate asOf) {
    Auditor.Outcome outcome =
        auditor.audit(Path.of("rules/base/plan.yaml"), new Auditor.Options(asOf, null));
    return ((Auditor.Outcome.Judged) outcome).audit();
  }
}
