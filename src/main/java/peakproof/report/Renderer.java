package peakproof.report;

import java.io.IOException;

/**
 * Lays audits out one by one and writes them down. Laying out takes nothing but the audit, so that
 * whichever thread judged a plan does it and lets the audit go; of a folder of any size only what
 * {@link #add} keeps is kept.
 */
public interface Renderer {
  /** An audit as it is to be written; any thread. */
  String page(Judged judged);

  /** Takes the pages, in the order of the plans. */
  void add(Rank rank, String page) throws IOException;

  /**
   * Takes what the run says beside an earlier one; before the end, and only when it is compared.
   */
  default void compared(Balance balance) {}

  /**
   * Writes what comes after the last page.
   *
   * @param plans how many plans were found, audited or not
   */
  void end(int plans) throws IOException;
}
