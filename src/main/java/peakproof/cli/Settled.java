package peakproof.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.report.Rank;

/**
 * What is left of a plan once it is judged and laid out: no more than the rest of the run needs.
 *
 * @param code what it makes the run's exit code at least
 * @param rank null when there is no audit of it
 * @param pages as they are to be written, one for each report; empty when nothing is
 * @param faults to be told
 * @param remark to be told as well
 */
record Settled(
    ExitCode code,
    @Nullable Rank rank,
    List<String> pages,
    List<Fault> faults,
    @Nullable String remark) {

  /** Of a plan that was not audited. */
  static Settled without(ExitCode code, List<Fault> faults) {
    return new Settled(code, null, List.of(), faults, null);
  }
}
