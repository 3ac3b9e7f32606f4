package peakproof.fact;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.document.Session;

/**
 * Less energy than the work asks for, as planned: an aim of losing weight, which has no end before
 * the race, or a session to come that is done fasted.
 *
 * @param key true of an aim, and of a hard or long session
 * @param minutes how long the session takes; unknown when not said, and of an aim
 * @param what the aim or session in words
 * @param daysToRace days from the session, or for an aim from the as-of date, to race day
 */
@OfHealth
public record EnergyCut(
    boolean key, @Nullable Double minutes, String what, double daysToRace, Where entry)
    implements Fact {
  static List<EnergyCut> all(Plan plan, Timeline timeline, Race race) {
    List<EnergyCut> cuts = new ArrayList<>();
    for (String aim : plan.aims().stream().sorted().toList()) {
      Where entry = new Where(plan.at() + "/aims", null, null);
      String what = "an aim of " + aim.replace('-', ' ');
      cuts.add(new EnergyCut(true, null, what, race.daysToGo(), entry));
    }
    timeline
        .sessions()
        .filter(session -> session.planned() && fasted(session.written))
        .forEach(
            session -> {
              String what = session.label() + " fasted on " + Words.weekday(session.date());
              cuts.add(
                  new EnergyCut(
                      session.hardOrLong(),
                      session.minutes(),
                      what,
                      session.daysToRace(),
                      session.where().get(0)));
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
