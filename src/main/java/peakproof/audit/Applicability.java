package peakproof.audit;

import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Plan;
import peakproof.document.Sport;
import peakproof.fact.Facts;
import peakproof.fact.ParaFile;
import peakproof.rule.Card;

/**
 * Whether a rule is for a plan at all. What the plan does not say keeps no rule out: that is what
 * {@code needs} is for.
 */
final class Applicability {
  private Applicability() {}

  /** Why a rule is not for the plan, or null when it is. */
  static @Nullable String notFor(Card card, Facts facts, Plan plan) {
    Card.Applies applies = card.applies();
    String water = facts.race().water();
    if (applies.raceWater() != null
        && water != null
        && applies.raceWater().equals("open") != facts.race().openWater()) {
      return "the race swim is in " + (facts.race().openWater() ? "open water" : "a pool");
    }
    if (!applies.distance().isEmpty()
        && facts.race().distance() != null
        && !applies.distance().contains(facts.race().distance())) {
      return "the race is " + facts.race().distance().word() + " distance";
    }
    Boolean drafting = plan.event().bike().drafting();
    if (applies.drafting() != null && drafting != null && !applies.drafting().equals(drafting)) {
      return drafting ? "drafting is allowed" : "drafting is not allowed";
    }
    if (!applies.phase().isEmpty() && facts.openWeeks().over(applies.phase())) {
      return "those weeks are over";
    }
    return athlete(applies, plan);
  }

  private static @Nullable String athlete(Card.Applies applies, Plan plan) {
    Athlete athlete = plan.athlete();
    boolean para = ParaFile.marked(athlete);
    if (applies.para() != null && applies.para() != para) {
      return para ? "the athlete races para" : "the athlete does not race para";
    }
    String device = athlete.para() == null ? null : athlete.para().device();
    boolean wheels = "wheelchair".equals(device) || "handcycle".equals(device);
    if (wheels && applies.sports().contains(Sport.RUN)) {
      return "the athlete does not run";
    }
    if (!applies.category().isEmpty()
        && athlete.category() != null
        && !applies.category().contains(athlete.category())) {
      return "the athlete races " + athlete.category();
    }
    return null;
  }
}
