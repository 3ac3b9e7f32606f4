package peakproof.report;

import java.util.List;
import peakproof.audit.Baseline;

/**
 * What a run says over all its plans beside an earlier one.
 *
 * @param against what the user compared with: a revision or a file
 * @param left plans that are no more, with their findings
 */
public record Balance(String against, int fresh, int known, int gone, List<Baseline.Left> left) {
  /** {@code against main: 1 new · 3 known · 2 gone}. */
  String counts() {
    return "against "
        + against
        + ": "
        + Lines.dotted(
            List.of(
                Lines.bound(fresh + " new"),
                Lines.bound(known + " known"),
                Lines.bound(gone + " gone")));
  }
}
