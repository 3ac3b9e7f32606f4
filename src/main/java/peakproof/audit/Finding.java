package peakproof.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Place;
import peakproof.rule.Hold;
import peakproof.rule.Severity;

/**
 * One thing wrong with a plan: one per rule, or per body part or illness where the rule is about
 * those.
 *
 * @param hold why it holds; null below HOLD
 * @param theme the folder of the rule: swim, bike, health, …
 * @param care the caution, or null when the rule has none
 * @param values the numbers of the reason, by placeholder
 * @param where the entries, the one to change first
 * @param fingerprint the same for the same trouble however the lines move
 * @param bites the day it matters: its own day, the last day it can be put right, or race day
 */
public record Finding(
    String rule,
    Severity severity,
    @Nullable Hold hold,
    String theme,
    String title,
    String why,
    String remedy,
    @Nullable String care,
    String grade,
    List<String> sources,
    Map<String, Value> values,
    List<Location> where,
    String fingerprint,
    LocalDate bites) {

  /** A number or word of the reason; {@code number} is null for words. */
  public record Value(@Nullable Double number, String text, String unit) {}

  /** A place with the day or week it stands for. */
  public record Location(Place place, @Nullable LocalDate date, @Nullable LocalDate week) {}
}
