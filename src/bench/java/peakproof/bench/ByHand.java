package peakproof.bench;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.fact.Fact;
import peakproof.fact.Facts;
import peakproof.fact.Settings;

/**
 * Twenty of the shipped rules written in plain Java over the same facts, with the same settings and
 * the same findings: what an audit by rules is measured against. A test holds them against the
 * rules over every case, so whoever changes one of these rules changes it here too.
 */
public final class ByHand {
  /** A rule: the facts it would report. */
  private interface Check {
    Stream<? extends Fact> found(Evidence all, Settings settings);
  }

  private static final Map<String, Check> CHECKS =
      Map.ofEntries(
          Map.entry("swim-open-water-weekly", SwimsByHand::openWaterWeekly),
          Map.entry("swim-frequency-low", SwimsByHand::frequencyLow),
          Map.entry("swim-wetsuit-rehearsal", SwimsByHand::wetsuitRehearsal),
          Map.entry("swim-longest-too-short", SwimsByHand::longestTooShort),
          Map.entry("swim-skills-sighting", SwimsByHand::sighting),
          Map.entry("swim-set-overreach", SwimsByHand::setOverreach),
          Map.entry("swim-shoulder-jump", SwimsByHand::shoulderJump),
          Map.entry("bike-longest-too-short", RidesByHand::longestTooShort),
          Map.entry("bike-too-hard-long", RidesByHand::tooHardLong),
          Map.entry("brick-long-none", RidesByHand::brickLongNone),
          Map.entry("brick-too-big", RidesByHand::brickTooBig),
          Map.entry("run-hard-off-bike", RidesByHand::hardOffBike),
          Map.entry("run-longest-too-long", RunsByHand::longestTooLong),
          Map.entry("run-session-spike", RunsByHand::sessionSpike),
          Map.entry("run-week-jump", RunsByHand::weekJump),
          Map.entry("load-jump", RunsByHand::loadJump),
          Map.entry("rest-day-none", RunsByHand::restDayNone),
          Map.entry("strength-none", RunsByHand::strengthNone),
          Map.entry("strength-too-heavy-late", RunsByHand::tooHeavyLate),
          Map.entry("taper-panic-session", RunsByHand::panicSession));

  private ByHand() {}

  /** The rules there are. */
  public static Set<String> rules() {
    return CHECKS.keySet();
  }

  /**
   * What the rules whose settings are given find.
   *
   * @param settings of rules that are among the twenty
   * @return what each rule that found something would report; no entry for the others
   */
  public static Map<String, List<Fact>> judge(
      Facts facts, Plan plan, Map<String, Settings> settings) {
    Evidence all = new Evidence(facts, plan);
    Map<String, List<Fact>> found = new TreeMap<>();
    settings.forEach(
        (rule, its) -> {
          List<Fact> reported = CHECKS.get(rule).found(all, its).<Fact>map(fact -> fact).toList();
          if (!reported.isEmpty()) {
            found.put(rule, reported);
          }
        });
    return found;
  }

  /** What is not known is not above anything. */
  static boolean above(@Nullable Double value, double limit) {
    return value != null && value > limit;
  }

  /** What is not known does not reach anything. */
  static boolean atLeast(@Nullable Double value, double limit) {
    return value != null && value >= limit;
  }
}
