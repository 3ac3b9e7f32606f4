package peakproof.report;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Background;
import peakproof.audit.Comparison;

/**
 * An audit on its way into a report.
 *
 * @param complete false when a broken rule could not run
 * @param comparison with an earlier audit; null when there is none to compare with
 * @param background what lies behind it; only asked for by reports that draw it, as it costs time
 */
public record Judged(
    Audit audit,
    boolean complete,
    @Nullable Comparison comparison,
    Supplier<Background> background) {
  /** An audit that is compared with no other. */
  public Judged(Audit audit, boolean complete, Supplier<Background> background) {
    this(audit, complete, null, background);
  }

  /** The same with nothing to draw behind it. */
  public Judged(Audit audit, boolean complete) {
    this(audit, complete, null, () -> Background.NONE);
  }
}
