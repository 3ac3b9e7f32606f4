package peakproof.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Finding;
import peakproof.rule.Severity;

/**
 * Who needs the coach first. Athletes come one by one; of each only a line is kept, so that a squad
 * may be of any size.
 */
public final class Roster {
  private static final int USUAL_TOP = 3;

  private final List<String> plans;
  private final @Nullable LocalDate since;
  private final InCommon inCommon = new InCommon();
  private final List<Row> rows = new ArrayList<>();

  /**
   * An empty one.
   *
   * @param plans the paths of all that were found, audited or not
   * @param since the day to compare with, or null
   */
  public Roster(List<String> plans, @Nullable LocalDate since) {
    this.plans = List.copyOf(plans);
    this.since = since;
  }

  /**
   * An athlete's line, and what is found, on its way to the roster.
   *
   * @param ofHealth rules that find something in health entries
   */
  public record Entry(Rank rank, RosterLine line, List<Finding> findings, Set<String> ofHealth) {
    /**
     * Of an audit, on any thread.
     *
     * @param since the day to compare with, or null
     * @param then the same plan as of that day; null when it could not be judged
     */
    public static Entry of(Judged judged, @Nullable LocalDate since, @Nullable Audit then) {
      RosterLine line = RosterLine.of(judged, since, then);
      Audit audit = judged.audit();
      return new Entry(line.rank(), line, audit.findings(), audit.ofHealth());
    }
  }

  /**
   * A line with the file of the athlete's page.
   *
   * @param page from the roster's own folder; null when there is none
   */
  record Row(RosterLine line, @Nullable String page) {}

  /** Takes an athlete; in the order of the plans. */
  public void add(Entry entry, @Nullable String page) {
    inCommon.add(entry.findings(), entry.ofHealth());
    rows.add(new Row(entry.line(), page));
  }

  /** Those who need the coach first come first. */
  List<Row> rows() {
    return rows.stream().sorted(Comparator.comparing(Row::line)).toList();
  }

  List<RosterLine> lines() {
    return rows().stream().map(Row::line).toList();
  }

  List<Rank> ranks() {
    return lines().stream().map(RosterLine::rank).toList();
  }

  /** What the squad has in common, the heaviest first. */
  List<Shared> shared() {
    return inCommon.all();
  }

  int plans() {
    return plans.size();
  }

  /** Plans of which there is no audit, because a document or a rule is wrong. */
  List<String> notAudited() {
    Set<String> audited =
        rows.stream().map(row -> row.line().plan()).collect(Collectors.toCollection(HashSet::new));
    return plans.stream().filter(plan -> !audited.contains(plan)).toList();
  }

  @Nullable LocalDate since() {
    return since;
  }

  /** What of it is read first: as much as of one audit, and no notes. */
  List<Shared> sharedFirst() {
    return shared().stream()
        .filter(shared -> shared.severity().atLeast(Severity.ASK))
        .limit(USUAL_TOP)
        .toList();
  }
}
