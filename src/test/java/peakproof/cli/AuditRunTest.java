package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.audit.Auditor.Outcome;
import peakproof.audit.Auditor.Stop;
import peakproof.audit.Background;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.report.LinesReport;
import peakproof.report.Rank;
import peakproof.report.Sample;
import peakproof.rule.Severity;

class AuditRunTest {
  private static final Fault WRONG_EVENT = fault("events/saltmarsh.yaml");

  @TempDir private Path folder;
  private final StringWriter err = new StringWriter();
  private final StringWriter out = new StringWriter();
  private final LinesReport report = new LinesReport(out, "peakproof");

  @Test
  void isFineWhenEveryPlanIsJudged() {
    assertThat(run(plan -> judged())).isEqualTo(ExitCode.FINE);
    assertThat(pages()).hasSize(2).allMatch(page -> page.contains("\"complete\":true"));
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void auditsTheOtherPlansWhenOneIsWrong() {
    ExitCode worst =
        run(plan -> plan.endsWith("a.yaml") ? new Outcome.Wrong(List.of(fault("a"))) : judged());
    assertThat(worst).isEqualTo(ExitCode.WRONG_DOCUMENT);
    assertThat(pages()).hasSize(1);
    assertThat(err.toString()).isEqualTo("a:3:5: what; expected; instead\n");
  }

  @Test
  void auditsTheOtherPlansAfterAMistakeOfOurs() {
    ExitCode worst =
        run(
            plan -> {
              if (plan.endsWith("a.yaml")) {
                throw new IllegalStateException("oops");
              }
              return judged();
            });
    assertThat(worst).isEqualTo(ExitCode.INTERNAL_ERROR);
    assertThat(pages()).hasSize(1);
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
    assertThat(run(plan -> new Outcome.Judged(Sample.runa(), false, () -> Background.NONE)))
        .isEqualTo(ExitCode.WRONG_RULE);
    assertThat(pages()).hasSize(2).allMatch(page -> page.contains("\"complete\":false"));
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
    PlanPaths plans =
        PlanPaths.under(List.of(plan("a.yaml"), empty, folder.resolve("missing")), messages);
    assertThat(plans.worst()).isEqualTo(ExitCode.WRONG_DOCUMENT);
    assertThat(plans.all()).hasSize(1);
    assertThat(err.toString().lines())
        .containsExactly(
            empty + ": no plan found; a plan is a YAML file that begins with 'plan:'",
            folder.resolve("missing") + ": no such file or folder");
  }

  @Test
  void goesNoFurtherAfterARuleThatRanAway() {
    AtomicInteger audited = new AtomicInteger();
    ExitCode worst =
        run(
            plan -> {
              audited.incrementAndGet();
              return stopped(Stop.RAN_AWAY);
            });
    assertThat(worst).isEqualTo(ExitCode.WRONG_RULE);
    assertThat(err.toString()).isEqualTo(fault("rule") + "\n");
    assertThat(pages()).isEmpty();
  }

  @Test
  void goesOnAfterARuleThatFailedOnOnePlan() {
    ExitCode worst = run(plan -> plan.endsWith("a.yaml") ? stopped(Stop.FAILED) : judged());
    assertThat(worst).isEqualTo(ExitCode.WRONG_RULE);
    assertThat(pages()).hasSize(1);
  }

  @Test
  void judgesAPlanAgainByItselfWhenMemoryRanOutBesideOthers() throws IOException {
    AtomicInteger audited = new AtomicInteger();
    ExitCode worst =
        run(
            4,
            plans(20),
            plan -> {
              boolean first = plan.endsWith("05.yaml") && audited.incrementAndGet() == 1;
              return first ? stopped(Stop.OUT_OF_MEMORY) : judged();
            });
    assertThat(worst).isEqualTo(ExitCode.FINE);
    assertThat(audited).hasValue(2);
    assertThat(pages()).hasSize(20);
  }

  @Test
  void blamesTheRuleThatTakesAllMemoryByItself() throws IOException {
    ExitCode worst =
        run(
            4,
            plans(20),
            plan -> plan.endsWith("05.yaml") ? stopped(Stop.OUT_OF_MEMORY) : judged());
    assertThat(worst).isEqualTo(ExitCode.WRONG_RULE);
    assertThat(err.toString()).isEqualTo(fault("rule") + "\n");
    assertThat(pages()).as("those before").hasSize(5);
  }

  @Test
  void tellsTheSameInTheSameOrderOnOneThreadAndOnMany() throws IOException {
    Function<Path, Outcome> auditing =
        plan -> {
          String name = plan.getFileName().toString();
          if (name.compareTo("10") < 0) {
            spin();
          }
          if (name.endsWith("7.yaml")) {
            throw new IllegalStateException(name);
          }
          return name.endsWith("3.yaml")
              ? new Outcome.Wrong(List.of(fault(name)))
              : new Outcome.Judged(
                  Sample.audit(name, null, List.of()), true, () -> Background.NONE);
        };
    List<Path> plans = plans(40);
    ExitCode alone = run(1, plans, auditing);
    String out = this.out.toString();
    String said = err.toString();
    this.out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    assertThat(run(8, plans, auditing)).isEqualTo(alone);
    assertThat(this.out.toString()).isEqualTo(out);
    assertThat(err.toString()).isEqualTo(said);
    assertThat(out.lines()).hasSize(32);
  }

  @Test
  void hasOnlyAFewPlansUnderWayAtATime() throws IOException {
    AtomicInteger begun = new AtomicInteger();
    AtomicInteger taken = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    Messages messages = new Messages(new PrintWriter(err), false);
    AuditRun<Path, Rank> run =
        new AuditRun<>(
            plan -> {
              most.accumulateAndGet(begun.incrementAndGet() - taken.get(), Math::max);
              return judged();
            },
            layout(),
            messages,
            Run.CLOCK,
            "");
    run.audit(2, plans(200).iterator(), settled -> taken.incrementAndGet());
    assertThat(taken).hasValue(200);
    assertThat(most.get()).isBetween(1, 2 * 4);
  }

  @Test
  void handsOverWhatIsDoneWhileTheNextPlanIsWaitedFor() throws IOException {
    CountDownLatch first = new CountDownLatch(1);
    Iterator<Path> slow =
        new Iterator<>() {
          private final Iterator<Path> plans = plans(2).iterator();
          private boolean begun;

          @Override
          public boolean hasNext() {
            if (begun && first.getCount() > 0) {
              try {
                assertThat(first.await(20, TimeUnit.SECONDS)).isTrue();
              } catch (InterruptedException e) {
                throw new IllegalStateException(e);
              }
            }
            return plans.hasNext();
          }

          @Override
          public Path next() {
            begun = true;
            return plans.next();
          }
        };
    Messages messages = new Messages(new PrintWriter(err), false);
    new AuditRun<Path, Rank>(plan -> judged(), layout(), messages, Run.CLOCK, "")
        .audit(2, slow, settled -> first.countDown());
    assertThat(first.getCount()).isZero();
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

  private ExitCode run(Function<Path, Outcome> auditing) {
    Messages messages = new Messages(new PrintWriter(err), false);
    PlanPaths plans =
        PlanPaths.under(
            List.of(
                plan("a.yaml"),
                plan("b.yaml"),
                folder.resolve("../" + folder.getFileName() + "/a.yaml")),
            messages);
    return run(2, List.copyOf(plans.all()), auditing);
  }

  private ExitCode run(int threads, List<Path> plans, Function<Path, Outcome> auditing) {
    Messages messages = new Messages(new PrintWriter(err), false);
    AuditRun<Path, Rank> run = new AuditRun<>(auditing, layout(), messages, Run.CLOCK, "");
    try {
      run.audit(
          threads,
          plans.iterator(),
          settled -> report.add(Objects.requireNonNull(settled.kept()), settled.pages().get(0)));
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
    return run.worst();
  }

  private PageOfPlan layout() {
    return new PageOfPlan(
        judged -> List.of(report.page(judged)),
        Severity.HOLD,
        new Past(List.of(), false),
        audit -> null);
  }

  private List<String> pages() {
    return out.toString().lines().toList();
  }

  private static List<Path> plans(int count) {
    return IntStream.range(0, count)
        .mapToObj(number -> Path.of(String.format(Locale.ROOT, "%02d.yaml", number)))
        .toList();
  }

  /** Something that takes longer than the plans after it. */
  private static void spin() {
    double sum = 0;
    for (int i = 0; i < 2_000_000; i++) {
      sum += Math.sqrt(i);
    }
    assertThat(sum).isPositive();
  }

  private static Outcome stopped(Stop stop) {
    return new Outcome.Stopped(fault("rule"), stop);
  }

  private Path plan(String name) {
    try {
      return Files.writeString(folder.resolve(name), "plan:\n");
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
  }

  private static Outcome judged() {
    return new Outcome.Judged(Sample.audit("Ask", null, List.of()), true, () -> Background.NONE);
  }

  private static Fault fault(String file) {
    return new Fault(new Place(file, 3, 5), "what", "expected", "instead");
  }
}
