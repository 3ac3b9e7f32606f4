package peakproof.report;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Finding;
import peakproof.rule.Severity;

/**
 * How bad a plan is beside others: all that is kept of an audit once it is laid out. The worst come
 * first, equally bad ones by path; accepted findings do not count.
 *
 * @param found how many findings there are of each severity; no entry stands for none
 */
public record Rank(String plan, String athlete, Map<Severity, Integer> found)
    implements Comparable<Rank> {
  /** By what was found alone. */
  static final Comparator<Rank> MOST_FOUND_FIRST =
      Comparator.<Rank>comparingInt(rank -> -rank.count(Severity.HOLD))
          .thenComparingInt(rank -> -rank.count(Severity.FIX))
          .thenComparingInt(rank -> -rank.count(Severity.ASK))
          .thenComparingInt(rank -> -rank.count(Severity.NOTE));

  private static final Comparator<Rank> WORST_FIRST = MOST_FOUND_FIRST.thenComparing(Rank::plan);

  /** Ranks a plan by its audit. */
  public static Rank of(Audit audit) {
    Map<Severity, Integer> found = new EnumMap<>(Severity.class);
    for (Finding finding : audit.findings()) {
      found.merge(finding.severity(), 1, Integer::sum);
    }
    return new Rank(audit.plan(), audit.athlete(), found);
  }

  int count(Severity severity) {
    return found.getOrDefault(severity, 0);
  }

  /** Its heaviest finding; null when nothing was found. */
  @Nullable Severity heaviest() {
    return found.keySet().stream().min(Severity::compareTo).orElse(null);
  }

  /** True when any finding weighs at least {@code bar}. */
  public boolean reaches(Severity bar) {
    return found.keySet().stream().anyMatch(severity -> severity.atLeast(bar));
  }

  @Override
  public int compareTo(Rank other) {
    return WORST_FIRST.compare(this, other);
  }
}
