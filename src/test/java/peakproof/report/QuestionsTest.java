package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import peakproof.audit.Auditor;
import peakproof.document.Documents;
import peakproof.fact.Need;
import peakproof.rule.Case;

/** Every entry that a rule of ours can miss has a question, and no question is left over. */
class QuestionsTest {
  private static final Questions QUESTIONS = Questions.shipped();
  private static final Set<String> MISSED = new TreeSet<>();

  @BeforeAll
  static void judgeEveryCase() {
    Auditor auditor = Auditor.load(List.of(Path.of("rules")));
    for (List<Case> cases : auditor.rules().cases().values()) {
      for (Case each : cases) {
        Auditor.Outcome outcome =
            auditor.audit(
                Documents.read("rules/base/plan.yaml", each.plan(), each.event(), each.log(), null),
                each.asOf());
        if (outcome instanceof Auditor.Outcome.Judged judged) {
          judged.audit().notJudged().forEach(rule -> MISSED.addAll(rule.missing()));
        }
      }
    }
  }

  @Test
  void knowsHowToAskForEveryNeed() {
    assertThat(Arrays.stream(Need.values()).map(Need::entry))
        .allMatch(entry -> QUESTIONS.of(entry) != null);
  }

  @Test
  void knowsHowToAskForWhateverACaseMisses() {
    assertThat(MISSED).isNotEmpty().allMatch(entry -> QUESTIONS.of(entry) != null);
  }

  @Test
  void asksForNothingThatNoRuleMisses() {
    Set<String> asked = new TreeSet<>(QUESTIONS.entries());
    Arrays.stream(Need.values()).forEach(need -> asked.remove(need.entry()));
    for (String missed : MISSED) {
      String known = QUESTIONS.known(missed);
      asked.removeIf(entry -> entry.equals(known) || missed.contains(entry));
    }
    assertThat(asked).isEmpty();
  }

  @Test
  void asksTheAthleteForOneOfSeveralThatWouldDo() {
    Questions.Question question = QUESTIONS.of("event.swim.water or goal.swim");
    assertThat(question).isEqualTo(QUESTIONS.of("goal.swim"));
    assertThat(QUESTIONS.of("no such entry")).isNull();
  }

  @Test
  void asksForNoDiagnosisAndLeavesHealthToTheAthlete() {
    for (String entry : QUESTIONS.entries()) {
      Questions.Question question = QUESTIONS.of(entry);
      assertThat(question.ask()).doesNotContainIgnoringCase("diagnos").doesNotContain("illness");
      boolean health = question.key().matches(".*(health|morning|mass|sleep).*");
      assertThat(question.optional()).as(entry).isEqualTo(health);
    }
  }
}
