package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Session;
import peakproof.document.SetLine;
import peakproof.document.Sport;
import peakproof.measure.Calibration;
import peakproof.measure.Constants;
import peakproof.measure.SetBreakdown;

/** A planned session in the athlete's words: what, how, where, with what, and why there. */
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

  private static final Map<String, String> LIGHT =
      Map.of(
          "day", "In daylight",
          "dusk", "At dusk: lights on, something bright on",
          "dark", "In the dark: lights, reflectors, and someone who knows where you are");

  private static final Map<String, String> TRAFFIC =
      Map.of("quiet", "Quiet roads", "busy", "Busy roads: stay seen", "closed", "Closed roads");

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
    return new Brief.Leg(title, steps, details(session));
  }

  private static String straight(Session session, Session before) {
    String where = session.scene().where();
    String place = where == null ? "" : " " + PLACES.getOrDefault(where, where);
    String from =
        before.sport() == Sport.SWIM ? "Straight out of the water: " : "Straight off the bike: ";
    return from + name(session.sport()).toLowerCase(Locale.ROOT) + place;
  }

  private List<String> details(Session session) {
    List<String> lines = new ArrayList<>();
    addRace(lines, session);
    addStrength(lines, session);
    addCompany(lines, session);
    Double aero = session.wear().aeroSeconds();
    if (aero != null && aero > 0) {
      lines.add(Figures.time(aero) + " of it in race position");
    }
    addWords(lines, "Kit: ", session.wear().kit());
    addWords(lines, "Practise: ", session.wear().practise());
    addFuel(lines, session.fuel());
    addConditions(lines, session.scene());
    if ("back-to-back".equals(session.purpose())) {
      lines.add("On tired legs on purpose; easy means easy");
    }
    return lines;
  }

  private static void addRace(List<String> lines, Session session) {
    Event.Legs legs = session.legs();
    if (legs != null) {
      List<String> lengths = new ArrayList<>();
      addLength(lengths, legs.swim(), Sport.SWIM, " swim");
      addLength(lengths, legs.bike(), Sport.BIKE, " bike");
      addLength(lengths, legs.run(), Sport.RUN, " run");
      lines.add(Figures.listed(lengths));
    }
    String effort = session.effort();
    if (effort != null) {
      lines.add(
          effort.equals("full") ? "Race it in earnest" : "Controlled: finish with something left");
    }
  }

  private static void addLength(
      List<String> lengths, @Nullable Double metres, Sport sport, String leg) {
    if (metres != null) {
      lengths.add(Figures.distance(metres, sport) + leg);
    }
  }

  private static void addStrength(List<String> lines, Session session) {
    Session.Strength strength = session.strength();
    if (strength == null) {
      return;
    }
    String load = strength.load();
    String purposes = words(strength.purposes());
    String text = Figures.dotted(purposes, load == null ? null : load + " load");
    if (!text.isEmpty()) {
      lines.add("For " + text);
    }
    if (session.fresh()) {
      lines.add("A new programme: start lighter than feels needed");
    }
  }

  /** Nobody is sent into open water alone by this page, whatever the plan says. */
  private static void addCompany(List<String> lines, Session session) {
    String company = session.scene().company();
    if (company == null) {
      return;
    }
    switch (company) {
      case "group" -> lines.add("With the group");
      case "supervised" -> lines.add("With supervision");
      default -> {
        if (!session.scene().openWater()) {
          lines.add("On your own");
        }
      }
    }
  }

  private static void addWords(List<String> lines, String label, @Nullable Set<String> words) {
    if (words != null && !words.isEmpty()) {
      lines.add(label + words(words));
    }
  }

  static String words(Set<String> words) {
    return Figures.listed(words.stream().map(SessionWords::word).toList());
  }

  /** {@code race clothing}; words of a club's own come as they are. */
  static String word(String word) {
    return switch (word) {
      case "pull-buoy" -> "pull buoy";
      case "both-sides" -> "breathing to both sides";
      case "contact" -> "swimming in contact";
      case "buoy-turns" -> "turns around buoys";
      case "transition" -> "transition";
      case "warm-up" -> "your race warm-up";
      case "wetsuit-strip" -> "getting out of the wetsuit";
      case "underwater" -> "calm under water";
      case "legs" -> "leg strength";
      case "upper-body" -> "upper body";
      default -> Printable.of(word.replace('-', ' '));
    };
  }

  private static void addFuel(List<String> lines, Session.@Nullable Fuel fuel) {
    if (fuel == null) {
      return;
    }
    String hourly = hourly(fuel);
    if (!hourly.isEmpty()) {
      lines.add(
          "Fuel an hour: "
              + hourly
              + ("race".equals(fuel.products()) ? ", with what you will use in the race" : ""));
    } else if ("race".equals(fuel.products())) {
      lines.add("Fuel with what you will use in the race");
    }
    if (fuel.fasted()) {
      lines.add("Before eating; carry something to eat, and use it if you feel weak or dizzy");
    }
  }

  /** {@code 75 g carbohydrate (glucose and fructose) and 600 ml to drink}. */
  static String hourly(Session.Fuel fuel) {
    List<String> pieces = new ArrayList<>();
    Double carbohydrate = fuel.carbohydrate();
    if (carbohydrate != null) {
      pieces.add(
          Figures.number(carbohydrate)
              + " g carbohydrate"
              + (fuel.sources().isEmpty() ? "" : " (" + words(fuel.sources()) + ")"));
    }
    Double fluid = fuel.fluid();
    if (fluid != null) {
      pieces.add(Figures.millilitres(fluid) + " to drink");
    }
    return Figures.listed(pieces);
  }

  private static void addConditions(List<String> lines, Session.Scene scene) {
    Double water = scene.water();
    if (water != null) {
      lines.add("Water about " + Figures.number(water) + " °C");
    }
    Double air = scene.air();
    if (air != null) {
      lines.add("Air about " + Figures.number(air) + " °C");
    }
    Double climb = scene.climb();
    Double descent = scene.descent();
    String hills =
        Figures.listed(
            java.util.stream.Stream.of(
                    climb == null ? "" : Figures.number(climb) + " m of climbing",
                    descent == null ? "" : Figures.number(descent) + " m downhill")
                .filter(text -> !text.isEmpty())
                .toList());
    if (!hills.isEmpty()) {
      lines.add("About " + hills);
    }
    addWord(lines, LIGHT, scene.light());
    addWord(lines, TRAFFIC, scene.traffic());
    if ("wet".equals(scene.surface())) {
      lines.add("On wet ground: brake early, corner slowly");
    }
    if (scene.heat()) {
      lines.add("In the heat on purpose: drink, and stop at the first sign of it being too much");
    }
  }

  private static void addWord(
      List<String> lines, Map<String, String> sentences, @Nullable String word) {
    if (word != null) {
      lines.add(sentences.getOrDefault(word, word));
    }
  }
}
