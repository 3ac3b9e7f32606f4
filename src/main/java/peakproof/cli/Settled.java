package peakproof.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor.Outcome;
import peakproof.document.Fault;

/**
 * What is left of a plan once it is judged and laid out: no more than the rest of the run needs.
 *
 * @param <K> what is kept of an audit to the end of the run
 * @param code what it makes the run's exit code at least
 * @param kept null when there is no audit of it
 * @param pages as they are to be written, one for each report; empty when nothing is
 * @param faults to be told
 * @param remark to be told as well
 */
record Settled<K>(
    ExitCode code,
    @Nullable K kept,
    List<String> pages,
    List<Fault> faults,
    @Nullable String remark) {

  /** Of a plan that was not audited; null when it was. */
  static <K> @Nullable Settled<K> unlessJudged(Outcome outcome) {
    if (outcome instanceof Outcome.Wrong wrong) {
      return without(ExitCode.WRONG_DOCUMENT, wrong.faults());
    }
    return outcome instanceof Outcome.Stopped stopped
        ? without(ExitCode.WRONG_RULE, List.of(stopped.rule()))
        : null;
  }

  private static <K> Settled<K> without(ExitCode code, List<Fault> faults) {
    return new Settled<>(code, null, List.of(), faults, null);
  }
}
