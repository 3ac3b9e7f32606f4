package peakproof.audit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.rule.Resolution;
import peakproof.rule.Severity;

/**
 * The judgement of one plan. Every rule is in exactly one of the lists: found (and not accepted),
 * clear, not judged, not for this plan, silenced, or accepted.
 *
 * @param plan the plan's path as the user gave it
 * @param log the log's path, or null
 * @param shape the block in words: {@code 3 peak + 2 taper weeks}
 * @param logEnds the last day with a log entry, or null
 * @param findings ranked, what the coach should read first in front
 * @param clear slugs of rules that found nothing
 * @param notForThisPlan rules that do not apply, with the reason
 * @param preset whose numbers count where neither house nor plan has a word
 * @param settings what preset, the house and this plan put in the place of shipped settings and
 *     severities
 * @param notDeclared lists the plan leaves out, which are read as "none declared"
 * @param remarks other things worth saying once
 * @param ofHealth rules that read health entries, or found something that stands in one
 */
public record Audit(
    String plan,
    @Nullable String log,
    String athlete,
    String event,
    LocalDate raceDate,
    LocalDate asOf,
    @Nullable LocalDate logEnds,
    String shape,
    List<Finding> findings,
    List<String> clear,
    List<NotJudged> notJudged,
    List<NotFor> notForThisPlan,
    List<Silenced> silenced,
    List<AcceptedFinding> accepted,
    Resolution.Chosen preset,
    List<Resolution.Changed> settings,
    List<String> notDeclared,
    List<String> remarks,
    Set<String> ofHealth) {

  /**
   * A rule that could not be judged.
   *
   * @param missing the entries that would settle it, such as {@code athlete.heart-rate.max}
   * @param canHold true when the rule can reach HOLD
   */
  public record NotJudged(String rule, List<String> missing, boolean canHold) {}

  /** A rule that does not apply, with the reason. */
  public record NotFor(String rule, String because) {}

  /** A rule the house turned off; {@code hold} is true when it could have held the plan. */
  public record Silenced(String rule, String because, boolean hold) {}

  /** A finding the coach lives with, with the reason and who accepted it until when. */
  public record AcceptedFinding(
      Finding finding, String because, @Nullable String by, @Nullable LocalDate until) {}

  /** Days from the as-of date to the race. */
  public long daysToGo() {
    return ChronoUnit.DAYS.between(asOf, raceDate);
  }

  /** How many findings have the severity. */
  public long count(Severity severity) {
    return findings.stream().filter(finding -> finding.severity() == severity).count();
  }
}
