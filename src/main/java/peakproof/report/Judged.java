package peakproof.report;

import java.util.function.Supplier;
import peakproof.audit.Audit;
import peakproof.audit.Background;

/**
 * An audit on its way into a report.
 *
 * @param complete false when a broken rule could not run
 * @param background what lies behind it; only asked for by reports that draw it, as it costs time
 */
public record Judged(Audit audit, boolean complete, Supplier<Background> background) {
  /** An audit with nothing to draw behind it. */
  public Judged(Audit audit, boolean complete) {
    this(audit, complete, () -> Background.NONE);
  }
}
