package peakproof.report;

import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Comparison;

/**
 * An audit on its way into a report.
 *
 * @param complete false when a broken rule could not run
 * @param comparison with an earlier audit; null when there is none to compare with
 */
public record Judged(Audit audit, boolean complete, @Nullable Comparison comparison) {
  /** An audit that is compared with no other. */
  public Judged(Audit audit, boolean complete) {
    this(audit, complete, null);
  }
}
