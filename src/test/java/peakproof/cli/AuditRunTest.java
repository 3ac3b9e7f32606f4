package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.audit.Auditor.Outcome;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.report.Report.Judged;
import peakproof.report.Sample;

class AuditRunTest {
  private static final Fault WRONG_EVENT = fault("events/saltmarsh.yaml");

  @TempDir private Path folder;
  private final StringWriter err = new StringWriter();

  @Test
  void isFineWhenEveryPlanIsJudged() {
    AuditRun run = run(plan -> judged());
    assertThat(run.worst()).isEqualTo(ExitCode.FINE);
    assertThat(run.judged()).hasSize(2).allMatch(Judged::complete);
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void auditsTheOtherPlansWhenOneIsWrong() {
    AuditRun run =
        run(plan -> plan.endsWith("a.yaml") ? new Outcome.Wrong(List.of(fault("a"))) : judged());
    assertThat(run.worst()).isEqualTo(ExitCode.WRONG_DOCUMENT);
    assertThat(run.judged()).hasSize(1);
    assertThat(err.toString()).isEqualTo("a:3:5: what; expected; instead\n");
  }

  @Test
  void auditsTheOtherPlansAfterAMistakeOfOurs() {
    AuditRun run =
        run(
            plan -> {
              if (plan.endsWith("a.yaml")) {
                throw new IllegalStateException("oops");
              }
              return judged();
            });
    assertThat(run.worst()).isEqualTo(ExitCode.INTERNAL_ERROR);
    assertThat(run.judged()).hasSize(1);
    assertThat(err.toString()).contains("a.yaml: IllegalStateException: oops");
  }

  @Test
  void asksForAReportOnceHoweverManyPlansFail() {
    run(
        plan -> {
          throw new IllegalStateException("oops");
        });
    assertThat(err.toString().lines()).hasSize(3);
    assertThat(err.toString()).containsOnlyOnce("Please report");
  }

  @Test
  void saysTheFaultOfAFileThatPlansShareOnce() {
    run(plan -> new Outcome.Wrong(List.of(WRONG_EVENT)));
    assertThat(err.toString().lines()).containsExactly(WRONG_EVENT.toString());
  }

  @Test
  void marksAuditsIncompleteWhenARuleIsBroken() {
    AuditRun run = run(plan -> new Outcome.Judged(Sample.runa(), false));
    assertThat(run.worst()).isEqualTo(ExitCode.WRONG_RULE);
    assertThat(run.judged()).hasSize(2).noneMatch(Judged::complete);
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

  @Test
  void failsWhenAPathHoldsNoPlanBesideOthersThatDo() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    Messages messages = new Messages(new PrintWriter(err), false);
    AuditRun run = new AuditRun(plan -> judged(), messages, Run.CLOCK);
    run.auditAll(List.of(plan("a.yaml"), empty, folder.resolve("missing")));
    assertThat(run.worst()).isEqualTo(ExitCode.WRONG_DOCUMENT);
    assertThat(run.judged()).hasSize(1);
    assertThat(err.toString().lines())
        .containsExactly(
            empty + ": no plan found; a plan is a YAML file that begins with 'plan:'",
            folder.resolve("missing") + ": no such file or folder");
  }

  @Test
  void clearsItsProgressBeforeItSaysAnything() {
    Messages messages = new Messages(new PrintWriter(err), true);
    messages.show("auditing 1 of 2");
    messages.show("auditing 2 of 2");
    messages.tell("a fault");
    messages.clear();
    assertThat(err.toString())
        .isEqualTo("\r\033[Kauditing 1 of 2\r\033[Kauditing 2 of 2\r\033[Ka fault\n");
  }

  @Test
  void showsNoProgressAwayFromATerminal() {
    Messages messages = new Messages(new PrintWriter(err), false);
    messages.show("auditing 1 of 2");
    messages.clear();
    assertThat(err.toString()).isEmpty();
  }

  private AuditRun run(Function<Path, Outcome> auditing) {
    Messages messages = new Messages(new PrintWriter(err), false);
    AuditRun run = new AuditRun(auditing, messages, Run.CLOCK);
    run.auditAll(
        List.of(
            plan("a.yaml"),
            plan("b.yaml"),
            folder.resolve("../" + folder.getFileName() + "/a.yaml")));
    return run;
  }

  private Path plan(String name) {
    try {
      return Files.writeString(folder.resolve(name), "plan:\n");
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
  }

  private static Outcome judged() {
    return new Outcome.Judged(Sample.runa(), true);
  }

  private static Fault fault(String file) {
    return new Fault(new Place(file, 3, 5), "what", "expected", "instead");
  }
}
