package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.PlanDay;

/**
 * A session to come on a day for which the plan notes an official warning that touches it: water
 * quality touches swims in open water, ice what goes over ground, the others all that is outdoors.
 *
 * @param warnings lightning, gale, ice, smoke or water-quality, in words
 * @param outdoors true outdoors, false indoors; unknown when the plan does not say where
 */
public record WarnedSession(Session session, String warnings, @Nullable Boolean outdoors)
    implements Fact {
  private static final Set<String> INDOORS = Set.of("pool", "trainer", "treadmill", "gym", "home");

  static List<WarnedSession> all(Timeline timeline) {
    List<WarnedSession> warned = new ArrayList<>();
    for (Day day : timeline.days()) {
      PlanDay plan = day.plan();
      if (day.changeable() && plan != null && !plan.warnings().isEmpty()) {
        for (Session session : day.sessions()) {
          List<String> touching =
              plan.warnings().stream().filter(warning -> touches(warning, session)).toList();
          if (session.endurance() && !touching.isEmpty()) {
            String words = String.join(", ", touching).replace('-', ' ');
            warned.add(new WarnedSession(session, words, outdoors(session)));
          }
        }
      }
    }
    return warned;
  }

  private static boolean touches(String warning, Session session) {
    boolean swim = session instanceof Swim;
    return switch (warning) {
      case "water-quality" -> swim;
      case "ice" -> !swim;
      default -> true;
    };
  }

  /** What follows straight after something outdoors is outdoors too, unless it says where. */
  private static @Nullable Boolean outdoors(Session session) {
    String where = session.written.scene().where();
    if (where != null) {
      return !INDOORS.contains(where);
    }
    return session.before != null && Boolean.TRUE.equals(outdoors(session.before)) ? true : null;
  }

  /**
   * True for a hard or long session, ten minutes or more at race effort, and every swim in open
   * water, which cannot be left at once.
   */
  public boolean key() {
    return session.hardOrLong()
        || session.sharp()
        || session instanceof Swim swim && swim.openWater();
  }

  /** True when it can be told whether it is outdoors, or does not matter. */
  boolean known() {
    return outdoors != null || !key();
  }

  /** Its day. */
  public LocalDate date() {
    return session.date();
  }

  /** The session in words. */
  public String label() {
    return session.label();
  }

  @Override
  public List<Where> where() {
    return session.where();
  }
}
