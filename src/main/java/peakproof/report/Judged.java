package peakproof.report;

import peakproof.audit.Audit;

/**
 * An audit on its way into a report.
 *
 * @param complete false when a broken rule could not run
 */
public record Judged(Audit audit, boolean complete) {}
