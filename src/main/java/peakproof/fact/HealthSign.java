package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * A health entry of the log that can hold a plan back: an illness of the whole body or of breathing
 * in the water that nobody cleared, or pain with a sign that should be looked at.
 *
 * @param what the entry in words
 * @param daysAgo days from its newest entry to the as-of date; below 0 when it is still to end
 * @param entries where it stands, newest first
 */
@OfHealth
public record HealthSign(String what, double daysAgo, List<Where> entries) implements Fact {

  static List<HealthSign> all(List<Illness> illnesses, List<Pain> pains, LocalDate asOf) {
    List<HealthSign> signs = new ArrayList<>();
    for (Illness illness : illnesses) {
      if ((illness.systemic() || illness.breathing()) && !illness.cleared()) {
        String what = "an illness, last on " + Words.weekday(illness.last());
        signs.add(new HealthSign(what, days(illness.last(), asOf), illness.entries()));
      }
    }
    for (Pain pain : pains) {
      if (pain.worse() || pain.limp() || pain.pointToBone()) {
        String what = "pain in " + pain.site() + ", " + pain.signs();
        signs.add(new HealthSign(what, days(pain.date(), asOf), pain.entries()));
      }
    }
    return signs;
  }

  private static double days(LocalDate from, LocalDate to) {
    return ChronoUnit.DAYS.between(from, to);
  }

  @Override
  public List<Where> where() {
    return entries;
  }
}
