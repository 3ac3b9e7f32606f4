package peakproof.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Baseline;
import peakproof.audit.Comparison;
import peakproof.audit.Finding;
import peakproof.audit.Gone;

/**
 * What became of one athlete's findings since a day: the same files, judged once more as of that
 * day. Nothing is stored between two runs.
 *
 * @param date the earlier day
 * @param compared false when the log tells nothing later than that day, or the plan could not be
 *     judged as of it; then all lists are empty
 * @param added found now and not then
 * @param heavier found at both, and heavier now
 * @param gone found then, and now neither found nor accepted
 */
record SinceDay(
    LocalDate date,
    boolean compared,
    List<Headline> added,
    List<Headline> heavier,
    List<Headline> gone) {

  /**
   * Compares the audits of two days.
   *
   * @param then null when it could not be judged
   */
  static SinceDay of(LocalDate date, Audit now, @Nullable Audit then) {
    if (then == null || !now.asOf().isAfter(date)) {
      return new SinceDay(date, false, List.of(), List.of(), List.of());
    }
    Comparison comparison = Comparison.of(now, Baseline.findings(then));
    List<Finding> fresh =
        IntStream.range(0, now.findings().size())
            .filter(i -> comparison.findings().get(i) == Comparison.Since.NEW)
            .mapToObj(now.findings()::get)
            .toList();
    Set<String> before =
        then.findings().stream().map(Finding::fingerprint).collect(Collectors.toSet());
    Set<String> gone =
        comparison.gone().stream().map(Gone::fingerprint).collect(Collectors.toSet());
    return new SinceDay(
        date,
        true,
        headlines(fresh, finding -> !before.contains(finding.fingerprint())),
        headlines(fresh, finding -> before.contains(finding.fingerprint())),
        headlines(then.findings(), finding -> gone.contains(finding.fingerprint())));
  }

  private static List<Headline> headlines(List<Finding> findings, Predicate<Finding> which) {
    return findings.stream().filter(which).map(Headline::of).toList();
  }
}
