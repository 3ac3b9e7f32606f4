package peakproof.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Finding;

/**
 * What became of one athlete's findings since a day: the same files, judged once more as of that
 * day. Nothing is stored between two runs.
 *
 * @param date the earlier day
 * @param compared false when the log tells nothing later than that day, or the plan could not be
 *     judged as of it; then all lists are empty
 * @param added found now and not then
 * @param heavier found at both, and heavier now
 * @param gone found then and not now, or accepted now
 */
record Since(
    LocalDate date,
    boolean compared,
    List<Headline> added,
    List<Headline> heavier,
    List<Headline> gone) {

  /**
   * Compares by fingerprint, which stays the same while lines move.
   *
   * @param then null when it could not be judged
   */
  static Since of(LocalDate date, Audit now, @Nullable Audit then) {
    if (then == null || !now.asOf().isAfter(date)) {
      return new Since(date, false, List.of(), List.of(), List.of());
    }
    Map<String, Finding> before = byFingerprint(then);
    Map<String, Finding> after = byFingerprint(now);
    return new Since(
        date,
        true,
        headlines(now, finding -> !before.containsKey(finding.fingerprint())),
        headlines(now, finding -> weighsMore(finding, before.get(finding.fingerprint()))),
        headlines(then, finding -> !after.containsKey(finding.fingerprint())));
  }

  private static boolean weighsMore(Finding finding, @Nullable Finding before) {
    return before != null && !before.severity().atLeast(finding.severity());
  }

  private static Map<String, Finding> byFingerprint(Audit audit) {
    return audit.findings().stream()
        .collect(Collectors.toMap(Finding::fingerprint, finding -> finding, (one, two) -> one));
  }

  private static List<Headline> headlines(Audit audit, Predicate<Finding> which) {
    return audit.findings().stream().filter(which).map(Headline::of).toList();
  }
}
