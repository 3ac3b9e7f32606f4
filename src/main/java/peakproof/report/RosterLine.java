package peakproof.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Finding;
import peakproof.fact.KeySession;
import peakproof.rule.Severity;

/**
 * One athlete on a roster: all that is kept of an audit. Who needs the coach first comes first: the
 * heaviest findings, then the most of them, then the fewest days to go, races that are over last.
 *
 * @param rank the plan, the athlete and how many findings there are of each severity
 * @param log the log's path, or null
 * @param logEnds the last day with a log entry, or null
 * @param complete false when a broken rule could not run
 * @param first what to read first; null when nothing was found
 * @param rules that found something
 * @param next the next session to ask about; null when none is written
 * @param since null when nobody asked
 */
record RosterLine(
    Rank rank,
    String event,
    LocalDate raceDate,
    LocalDate asOf,
    @Nullable String log,
    @Nullable LocalDate logEnds,
    boolean complete,
    @Nullable Headline first,
    List<String> rules,
    @Nullable KeySession next,
    @Nullable SinceDay since)
    implements Comparable<RosterLine> {
  private static final Comparator<RosterLine> NEEDS_THE_COACH_FIRST =
      Comparator.comparing(RosterLine::rank, Rank.MOST_FOUND_FIRST)
          .thenComparing(line -> line.daysToGo() < 0)
          .thenComparingLong(RosterLine::daysToGo)
          .thenComparing(RosterLine::athlete)
          .thenComparing(RosterLine::plan);

  /**
   * The line of an audit.
   *
   * @param since the day to compare with, or null
   * @param then the same plan as of that day; null when it could not be judged
   */
  static RosterLine of(Judged judged, @Nullable LocalDate since, @Nullable Audit then) {
    Audit audit = judged.audit();
    List<Finding> findings = audit.findings();
    return new RosterLine(
        Rank.of(audit),
        audit.event(),
        audit.raceDate(),
        audit.asOf(),
        audit.log(),
        audit.logEnds(),
        judged.complete(),
        findings.isEmpty() ? null : Headline.of(findings.get(0)),
        findings.stream().map(Finding::rule).distinct().toList(),
        judged.background().get().next(),
        since == null ? null : SinceDay.of(since, audit, then));
  }

  String plan() {
    return rank.plan();
  }

  String athlete() {
    return rank.athlete();
  }

  int found(Severity severity) {
    return rank.count(severity);
  }

  long daysToGo() {
    return ChronoUnit.DAYS.between(asOf, raceDate);
  }

  @Override
  public int compareTo(RosterLine other) {
    return NEEDS_THE_COACH_FIRST.compare(this, other);
  }
}
