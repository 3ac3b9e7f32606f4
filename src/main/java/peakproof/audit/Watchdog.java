package peakproof.audit;

import java.util.Arrays;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.rule.Ruleset;

/**
 * Lets the rules run over one plan and gives up when they take too long, too much memory, or fail.
 * The engine can only be asked to stop between two firings, so the run has a thread of its own that
 * is left behind and ends with the program; nothing is judged after that.
 */
final class Watchdog {
  /** The property that says how many milliseconds the rules may take over one plan. */
  static final String PATIENCE = "peakproof.rules.patience";

  /** An audit takes a small part of a second; a slow machine under load, a few. */
  private static final long USUAL_PATIENCE = 30_000;

  /** As deep as the program's own thread. */
  private static final long STACK = 8L * 1024 * 1024;

  private final long patience = Long.getLong(PATIENCE, USUAL_PATIENCE);
  private volatile @Nullable RunawayRule bitten;

  /** What ended the rules before; null while all is well. */
  @Nullable RunawayRule bitten() {
    return bitten;
  }

  /**
   * Runs the rules.
   *
   * @param rules what to run; it tells each rule it comes to
   * @throws RunawayRule when they did not come to their end now, or did not before
   */
  <T> T run(Function<Consumer<String>, T> rules) throws RunawayRule {
    if (bitten != null) {
      throw bitten;
    }
    Run<T> run = new Run<>(rules);
    Thread thread = new Thread(null, run, "rules", STACK);
    thread.setDaemon(true);
    thread.start();
    try {
      thread.join(patience);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
    if (thread.isAlive()) {
      throw bite(
          new RunawayRule(
              run.rule, "ran for more than " + patience + " ms", Auditor.Stop.RAN_AWAY));
    }
    if (run.failure instanceof OutOfMemoryError) {
      throw bite(
          new RunawayRule(run.rule, "takes more memory than there is", Auditor.Stop.OUT_OF_MEMORY));
    }
    return result(run);
  }

  private static <T> T result(Run<T> run) throws RunawayRule {
    Throwable failure = run.failure;
    if (failure instanceof RuntimeException mistake) {
      String rule = culprit(mistake);
      if (rule != null) {
        throw new RunawayRule(rule, "failed on this plan", Auditor.Stop.FAILED);
      }
      throw mistake;
    }
    if (failure instanceof Error error) {
      throw error;
    }
    T result = run.result;
    if (result == null) {
      throw new IllegalStateException(failure);
    }
    return result;
  }

  /**
   * The rule in whose classes a mistake was made; null when it was made in ours. It need not be the
   * one whose turn it is: what asks for one fact alone is tried for all rules as the facts come in.
   */
  private static @Nullable String culprit(Throwable mistake) {
    Throwable root = mistake;
    while (root.getCause() != null && root.getCause() != root) {
      root = root.getCause();
    }
    return Arrays.stream(root.getStackTrace())
        .map(StackTraceElement::getClassName)
        .filter(name -> name.startsWith("peakproof."))
        .findFirst()
        .map(Ruleset::ruleOfClass)
        .orElse(null);
  }

  /** Remembers what ended the rules, and gives it back to be thrown. */
  RunawayRule bite(RunawayRule reason) {
    bitten = reason;
    return reason;
  }

  /** What the thread does and what came of it; read once the thread has ended. */
  private static final class Run<T> implements Runnable {
    private final Function<Consumer<String>, T> rules;
    private volatile @Nullable String rule;
    private volatile @Nullable T result;
    private volatile @Nullable Throwable failure;

    private Run(Function<Consumer<String>, T> rules) {
      this.rules = rules;
    }

    @Override
    public void run() {
      try {
        result = rules.apply(next -> rule = next);
      } catch (Throwable e) {
        failure = e;
      }
    }
  }
}
