package peakproof.rule;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.fact.Phase;
import peakproof.fact.Settings;
import peakproof.measure.DistanceClass;

/**
 * Everything a reader sees of a rule, and every number a club may change.
 *
 * @param theme the folder it lies in
 * @param steps how its severity changes, lightest first
 * @param hold why it holds when it does; null when it cannot
 * @param sources author, year, journal, DOI; empty for a coaching convention
 * @param needs what must be known to judge
 * @param judgesAbsence true when the finding is that something is missing
 * @param fromDay from how many days before the race an absence matters; null from the beginning
 * @param onByDefault false when a club must ask for it
 * @param why the reason, with placeholders
 * @param remedy what the coach could do
 * @param care the caution for whoever stands by the athlete; null when there is none
 * @param notFor what it does not judge, in words; null when there is nothing to say
 * @param was former names, which keep working
 */
public record Card(
    String rule,
    String theme,
    String title,
    Severity severity,
    List<Step> steps,
    @Nullable Hold hold,
    Grade grade,
    List<String> sources,
    Applies applies,
    List<Need> needs,
    boolean judgesAbsence,
    @Nullable Integer fromDay,
    boolean onByDefault,
    Map<String, Setting> settings,
    Template why,
    Template remedy,
    @Nullable Template care,
    @Nullable String notFor,
    List<String> was) {

  /** The same rule with other texts. */
  Card inWords(
      String otherTitle,
      Template otherWhy,
      Template otherRemedy,
      @Nullable Template otherCare,
      @Nullable String otherNotFor) {
    return new Card(
        rule,
        theme,
        otherTitle,
        severity,
        steps,
        hold,
        grade,
        sources,
        applies,
        needs,
        judgesAbsence,
        fromDay,
        onByDefault,
        settings,
        otherWhy,
        otherRemedy,
        otherCare,
        otherNotFor,
        was);
  }

  /**
   * From where another severity counts: from a value on, or when a yes/no field of the reported
   * fact holds; exactly one of the two is there.
   */
  public record Step(Settings.@Nullable Value from, @Nullable String when, Severity severity) {}

  /** One thing that must be known: any of these. */
  public record Need(List<String> anyOf) {}

  /**
   * The plans it is for; an empty set or null admits all.
   *
   * @param raceWater open or pool
   */
  public record Applies(
      @Nullable String raceWater,
      Set<DistanceClass> distance,
      @Nullable Boolean drafting,
      Set<Phase> phase,
      Set<Sport> sports,
      @Nullable Boolean para,
      Set<String> category) {
    /** All plans. */
    public static final Applies ALL =
        new Applies(null, Set.of(), null, Set.of(), Set.of(), null, Set.of());
  }

  /**
   * A number a club may change.
   *
   * @param text as the card writes it
   * @param from least value that makes sense
   * @param to greatest value that makes sense
   */
  public record Setting(
      String name,
      Settings.Value value,
      String text,
      String unit,
      Settings.Value from,
      Settings.Value to,
      String meaning) {}

  /** True when it can hold a plan back. */
  public boolean canHold() {
    return Stream.concat(Stream.of(severity), steps.stream().map(Step::severity))
        .anyMatch(each -> each == Severity.HOLD);
  }
}
