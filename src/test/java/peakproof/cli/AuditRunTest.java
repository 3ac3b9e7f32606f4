package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import peakproof.audit.Auditor.Outcome;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.report.Report.Judged;
import peakproof.report.Sample;

class AuditRunTest {
  private static final Fault WRONG_EVENT = fault("events/saltmarsh.yaml");

  private final StringWriter err = new StringWriter();

  @Test
  void isFineWhenEveryPlanIsJudged() {
    AuditRun run = run(true, plan -> judged());
    assertThat(run.worst()).isEqualTo(ExitCode.FINE);
    assertThat(run.judged()).hasSize(2).allMatch(Judged::complete);
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void auditsTheOtherPlansWhenOneIsWrong() {
    AuditRun run =
        run(
            true,
            plan -> plan.endsWith("a.yaml") ? new Outcome.Wrong(List.of(fault("a"))) : judged());
    assertThat(run.worst()).isEqualTo(ExitCode.WRONG_DOCUMENT);
    assertThat(run.judged()).hasSize(1);
    assertThat(err.toString()).isEqualTo("a:3:5: what; expected; instead\n");
  }

  @Test
  void auditsTheOtherPlansAfterAMistakeOfOurs() {
    AuditRun run =
        run(
            true,
            plan -> {
              if (plan.endsWith("a.yaml")) {
                throw new IllegalStateException("oops");
              }
              return judged();
            });
    assertThat(run.worst()).isEqualTo(ExitCode.INTERNAL_ERROR);
    assertThat(run.judged()).hasSize(1);
    assertThat(err.toString()).contains("internal error at a.yaml: IllegalStateException: oops");
  }

  @Test
  void saysTheFaultOfAFileThatPlansShareOnce() {
    run(true, plan -> new Outcome.Wrong(List.of(WRONG_EVENT)));
    assertThat(err.toString().lines()).containsExactly(WRONG_EVENT.toString());
  }

  @Test
  void marksAuditsIncompleteWhenARuleIsBroken() {
    AuditRun loaded = run(false, plan -> judged());
    assertThat(loaded.worst()).isEqualTo(ExitCode.WRONG_RULE);
    assertThat(loaded.judged()).noneMatch(Judged::complete);
  }

  @Test
  void keepsTheWorseOfTwoCodes() {
    assertThat(
            List.of(
                ExitCode.INTERNAL_ERROR,
                ExitCode.WRONG_RULE,
                ExitCode.WRONG_USAGE,
                ExitCode.WRONG_DOCUMENT,
                ExitCode.FOUND,
                ExitCode.FINE))
        .isSortedAccordingTo((one, two) -> one == two ? 0 : one.or(two) == one ? -1 : 1)
        .extracting(ExitCode::number)
        .containsExactly(5, 4, 2, 3, 1, 0);
  }

  private AuditRun run(boolean rulesComplete, Function<Path, Outcome> auditing) {
    AuditRun run = new AuditRun(auditing, rulesComplete, new Messages(new PrintWriter(err)));
    run.audit(Path.of("a.yaml"));
    run.audit(Path.of("b.yaml"));
    return run;
  }

  private static Outcome judged() {
    return new Outcome.Judged(Sample.runa());
  }

  private static Fault fault(String file) {
    return new Fault(new Place(file, 3, 5), "what", "expected", "instead");
  }
}
