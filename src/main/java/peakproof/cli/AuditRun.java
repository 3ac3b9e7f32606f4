package peakproof.cli;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor.Outcome;
import peakproof.audit.Auditor.Stop;

/**
 * Audits plan after plan, some at a time and all told in their order, so that the same plans give
 * the same whatever the machine. One that fails stops no other; the worst code is remembered. Only
 * a rule that runs away ends the run.
 *
 * @param <A> what a plan is found by
 * @param <K> what is kept of an audit to the end of the run
 */
final class AuditRun<A, K> {
  /** A run that takes longer shows how far it is. */
  private static final Duration PATIENCE = Duration.ofSeconds(1);

  private final Function<A, Outcome> auditing;
  private final Layout<A, K> layout;
  private final Messages messages;
  private final Clock clock;
  private final Instant began;
  private final String among;
  private int plans;
  private ExitCode worst = ExitCode.FINE;

  /** Turns what came of a plan into what is left of it; on any thread. */
  interface Layout<A, K> {
    /** Of a plan that was judged, or whose documents or rules are wrong. */
    Settled<K> of(A plan, Outcome outcome);

    /** What to write of a plan over which the program itself failed; null for nothing. */
    @Nullable String failed(A plan);
  }

  /** Writes down what there is to write of each plan, in the order of the plans. */
  @FunctionalInterface
  interface Writing<K> {
    void take(Settled<K> settled) throws IOException;
  }

  /** What came of a plan and what is left of it. */
  private record Done<K>(Outcome outcome, Settled<K> settled) {}

  /**
   * Begins a run.
   *
   * @param auditing judges a plan; on any thread
   * @param among what is said of how many there are: {@code of 12}
   */
  AuditRun(
      Function<A, Outcome> auditing,
      Layout<A, K> layout,
      Messages messages,
      Clock clock,
      String among) {
    this.auditing = auditing;
    this.layout = layout;
    this.messages = messages;
    this.clock = clock;
    this.began = clock.instant();
    this.among = among;
  }

  /** Audits all plans on so many threads. */
  void audit(int threads, Iterator<A> all, Writing<K> writing) throws IOException {
    try (InOrder<A, Done<K>> work = new InOrder<>(threads, this::done)) {
      work.each(all, (plan, result) -> take(plan, certain(plan, result, work, threads), writing));
    }
  }

  private Done<K> done(A plan) {
    Outcome outcome = auditing.apply(plan);
    return new Done<>(outcome, layout.of(plan, outcome));
  }

  /**
   * Memory is shared by all that run at a time, so want of it says nothing of the plan it struck:
   * that one is judged again by itself, unless it is plain which rule is to blame.
   */
  private InOrder.Result<Done<K>> certain(
      A plan, InOrder.Result<Done<K>> result, InOrder<A, Done<K>> work, int threads) {
    if (threads == 1 || !outOfMemory(result)) {
      return result;
    }
    return work.alone(
        others ->
            others.stream()
                .filter(other -> stop(other) == Stop.RAN_AWAY)
                .findFirst()
                .orElseGet(() -> again(plan)));
  }

  private InOrder.Result<Done<K>> again(A plan) {
    try {
      return new InOrder.Result<>(done(plan), null);
    } catch (RuntimeException | StackOverflowError mistake) {
      return new InOrder.Result<>(null, mistake);
    }
  }

  private static boolean outOfMemory(InOrder.Result<? extends Done<?>> result) {
    return result.failure() instanceof OutOfMemoryError || stop(result) == Stop.OUT_OF_MEMORY;
  }

  private static @Nullable Stop stop(InOrder.Result<? extends Done<?>> result) {
    return result.value() != null && result.value().outcome() instanceof Outcome.Stopped stopped
        ? stopped.stop()
        : null;
  }

  private boolean take(A plan, InOrder.Result<Done<K>> result, Writing<K> writing)
      throws IOException {
    plans++;
    showProgress();
    Settled<K> settled = result.value() == null ? failed(plan, result) : result.value().settled();
    messages.tell(settled.faults());
    if (settled.remark() != null) {
      messages.tell(settled.remark());
    }
    note(settled.code());
    if (settled.kept() != null || !settled.pages().isEmpty()) {
      writing.take(settled);
    }
    Stop stop = stop(result);
    return stop == null || stop == Stop.FAILED;
  }

  private Settled<K> failed(A plan, InOrder.Result<Done<K>> result) {
    Throwable failure = Objects.requireNonNull(result.failure());
    if (failure instanceof Error error && !(error instanceof StackOverflowError)) {
      throw error;
    }
    messages.tellOurMistake(failure, plan.toString());
    String page = layout.failed(plan);
    List<String> pages = page == null ? List.of() : List.of(page);
    return new Settled<>(ExitCode.INTERNAL_ERROR, null, pages, List.of(), null);
  }

  private void showProgress() {
    if (Duration.between(began, clock.instant()).compareTo(PATIENCE) > 0) {
      messages.show("auditing " + plans + " " + among + "...");
    }
  }

  /** Remembers a code, unless a worse one is known. */
  void note(ExitCode code) {
    worst = worst.or(code);
  }

  ExitCode worst() {
    return worst;
  }
}
