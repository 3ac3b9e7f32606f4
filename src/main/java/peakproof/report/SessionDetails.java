package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Session;
import peakproof.document.Sport;

/** How a planned session is done, line by line: with whom, with what, in what conditions. */
final class SessionDetails {
  private static final Map<String, String> LIGHT =
      Map.of(
          "day", "In daylight",
          "dusk", "At dusk: lights on, something bright on",
          "dark", "In the dark: lights, reflectors, and someone who knows where you are");

  private static final Map<String, String> TRAFFIC =
      Map.of("quiet", "Quiet roads", "busy", "Busy roads: stay seen", "closed", "Closed roads");

  private SessionDetails() {}

  static List<String> of(Session session) {
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
    String purposes = PlainWords.listed(strength.purposes());
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
      lines.add(label + PlainWords.listed(words));
    }
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
              + (fuel.sources().isEmpty() ? "" : " (" + PlainWords.listed(fuel.sources()) + ")"));
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
            Stream.of(
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
