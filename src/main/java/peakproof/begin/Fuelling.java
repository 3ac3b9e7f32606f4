package peakproof.begin;

import java.util.Locale;

/**
 * What is eaten and drunk in the race, and therefore in what rehearses it. It begins low: as much
 * carbohydrate as one sugar gives on the bike, a little over the least the house asks on the run.
 */
final class Fuelling {
  /** Minutes from which a session is fuelled (common practice, no source). */
  static final int FROM = 75;

  private static final double ABOVE_LEAST = 1.25;

  /** Millilitres an hour until sweat is weighed (common practice, no source). */
  private static final int DRINK = 500;

  private static final int DRINK_RUNNING = 400;

  private final Brief brief;

  Fuelling(Brief brief) {
    this.brief = brief;
  }

  Work onBike(Work ride) {
    return ride.with("fuel", "{" + bike() + ", products: race}");
  }

  Work onRun(Work run) {
    return brief.isLong() ? run.with("fuel", "{" + run() + ", products: race}") : run;
  }

  private String bike() {
    double most = brief.house().of("fuel-rate-out-of-band", "one-sugar");
    return rates(most, DRINK);
  }

  private String run() {
    double least = brief.house().of("fuel-rate-out-of-band", "run-least");
    return rates(Math.ceil(least * ABOVE_LEAST / 5) * 5, DRINK_RUNNING);
  }

  private static String rates(double carbohydrate, int drink) {
    return String.format(Locale.ROOT, "carbohydrate: %.0fg/h, fluid: %dml/h", carbohydrate, drink);
  }

  /** The part of the plan on race day. */
  String raceDay() {
    StringBuilder text = new StringBuilder();
    text.append("  # A start, common practice and no source: put in what the athlete has tried.");
    text.append(" Drink after weighing\n");
    text.append("  # a long session before and after (athlete.sweat-rates), never more than is");
    text.append(" sweated.\n");
    text.append("  race-day:\n    fuel:\n");
    text.append("      bike: {").append(bike()).append("}\n");
    text.append("      run: {").append(run()).append("}\n");
    text.append("    warm-up: ");
    text.append(brief.isOpenWater() ? "10min in the water" : "10min in the pool");
    text.append("    # where the race allows it; else on land\n");
    if (brief.isWetsuitSure()) {
      text.append("    wetsuit: {worn: yes}\n");
    }
    return text.append("    # caffeine: 180mg, medicines: [], first-use: [], carries: 1.5l\n")
        .toString();
  }
}
