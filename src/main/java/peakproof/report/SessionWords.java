package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Session;
import peakproof.document.SetLine;
import peakproof.document.Sport;
import peakproof.measure.Calibration;
import peakproof.measure.Constants;
import peakproof.measure.SetBreakdown;

/**
 * A planned session in the athlete's words: what it is, where, how long, and what of it follows
 * what.
 */
final class SessionWords {
  private static final Map<String, String> PLACES =
      Map.ofEntries(
          Map.entry("pool", "in the pool"),
          Map.entry("open-water", "in open water"),
          Map.entry("road", "on the road"),
          Map.entry("trainer", "on the indoor trainer"),
          Map.entry("track", "on the track"),
          Map.entry("trail", "on trails"),
          Map.entry("treadmill", "on the treadmill"),
          Map.entry("gravel", "on gravel"),
          Map.entry("gym", "in the gym"),
          Map.entry("home", "at home"));

  private static final Map<String, String> PARTS_OF_DAY =
      Map.of("am", "in the morning", "noon", "around noon", "pm", "in the afternoon");

  private final Calibration athlete;
  private final Constants constants;

  SessionWords(Calibration athlete, Constants constants) {
    this.athlete = athlete;
    this.constants = constants;
  }

  Brief.Session of(Session session) {
    List<Session> chain = new ArrayList<>();
    for (Session each = session; each != null; each = each.then()) {
      chain.add(each);
    }
    List<Brief.Leg> legs = new ArrayList<>();
    for (int i = 0; i < chain.size(); i++) {
      legs.add(leg(chain.get(i), chain.size() > 1, i == 0 ? null : chain.get(i - 1)));
    }
    return new Brief.Session(
        title(chain),
        session.partOfDay() == null ? session.time() : null,
        length(chain),
        seconds(chain),
        kind(session),
        legs);
  }

  /** What a calendar knows a session again by. */
  private static String kind(Session session) {
    return session.race() != null ? "race" : name(session.sport()).toLowerCase(Locale.ROOT);
  }

  private static String title(List<Session> chain) {
    Session first = chain.get(0);
    StringBuilder title = new StringBuilder(named(first));
    chain.stream()
        .skip(1)
        .forEach(
            next -> title.append(", then ").append(name(next.sport()).toLowerCase(Locale.ROOT)));
    String part = first.partOfDay();
    if (part != null) {
      title.append(' ').append(PARTS_OF_DAY.getOrDefault(part, ""));
    }
    if (chain.stream().anyMatch(Session::test)) {
      title.append(", as a test");
    }
    if (first.optional()) {
      title.append(" (if you feel like it)");
    }
    return title.toString();
  }

  private static String named(Session session) {
    String race = session.race();
    if (race != null) {
      return "Race: " + Printable.of(race);
    }
    String what = name(session.sport());
    if (session.sport() == Sport.OTHER && session.set() != null) {
      String words = freeWords(session.set());
      what = words.isEmpty() ? what : Printable.of(words);
    }
    String where = session.scene().where();
    return where == null ? what : what + " " + PLACES.getOrDefault(where, where);
  }

  /** {@code walk} of {@code 40min walk}. */
  private static String freeWords(SetLine set) {
    String[] halves = set.text().strip().split("\\s+", 2);
    String words = halves.length < 2 ? "" : halves[1];
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String name(@Nullable Sport sport) {
    if (sport == null) {
      return "Race";
    }
    return switch (sport) {
      case SWIM -> "Swim";
      case BIKE -> "Ride";
      case RUN -> "Run";
      case STRENGTH -> "Strength";
      case OTHER -> "Something else";
    };
  }

  /** How far a swim goes in all; longer sports are told by time. */
  private @Nullable String length(List<Session> chain) {
    Session first = chain.get(0);
    SetLine set = first.set();
    Double metres =
        chain.size() > 1 || set == null || set.parts().size() < 2 || first.sport() != Sport.SWIM
            ? null
            : SetBreakdown.of(set, Sport.SWIM, athlete, constants).metres();
    return metres == null ? null : Figures.distance(metres, Sport.SWIM);
  }

  private @Nullable Double seconds(List<Session> chain) {
    double seconds = 0;
    for (Session each : chain) {
      Sport sport = each.sport();
      Double minutes =
          each.set() == null || sport == null
              ? null
              : SetBreakdown.of(each.set(), sport, athlete, constants).minutes();
      if (minutes == null) {
        return null;
      }
      seconds += 60 * minutes;
    }
    return seconds;
  }

  private Brief.Leg leg(Session session, boolean ofSeveral, @Nullable Session before) {
    Sport sport = session.sport();
    List<Brief.Step> steps =
        session.set() == null || sport == null || !sport.racing()
            ? List.of()
            : SetWords.of(session.set(), sport, athlete, constants);
    String title = !ofSeveral ? "" : before == null ? named(session) : straight(session, before);
    return new Brief.Leg(title, steps, SessionDetails.of(session));
  }

  private static String straight(Session session, Session before) {
    String where = session.scene().where();
    String place = where == null ? "" : " " + PLACES.getOrDefault(where, where);
    String from =
        before.sport() == Sport.SWIM ? "Straight out of the water: " : "Straight off the bike: ";
    return from + name(session.sport()).toLowerCase(Locale.ROOT) + place;
  }
}
