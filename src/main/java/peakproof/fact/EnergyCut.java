package peakproof.fact;

import java.util.ArrayList;
import java.util.List;
import peakproof.document.Plan;
import peakproof.document.Session;

/**
 * Less energy than the work asks for, as planned: an aim of losing weight, which has no end before
 * the race, or a hard or long session to come that is done fasted.
 *
 * @param what the aim or session in words
 * @param daysToRace days from the session, or for an aim from the as-of date, to race day
 */
@OfHealth
public record EnergyCut(String what, double daysToRace, Where entry) implements Fact {
  static List<EnergyCut> all(Plan plan, Timeline timeline, Race race) {
    List<EnergyCut> cuts = new ArrayList<>();
    for (String aim : plan.aims().stream().sorted().toList()) {
      Where entry = new Where(plan.at() + "/aims", null, null);
      cuts.add(new EnergyCut("an aim of " + aim.replace('-', ' '), race.daysToGo(), entry));
    }
    timeline
        .sessions()
        .filter(session -> session.planned() && session.hardOrLong() && fasted(session.written))
        .forEach(
            session -> {
              String what = session.label() + " fasted on " + Words.weekday(session.date());
              cuts.add(new EnergyCut(what, session.daysToRace(), session.where().get(0)));
            });
    return cuts;
  }

  private static boolean fasted(Session session) {
    return session.fuel() != null && session.fuel().fasted();
  }

  @Override
  public List<Where> where() {
    return List.of(entry);
  }
}
