package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import peakproof.document.Event;
import peakproof.document.Plan;
import peakproof.document.PlanWeek;
import peakproof.document.Session;
import peakproof.document.Sport;

/** What a coach says with every plan so that nobody gets hurt: common practice, no source. */
final class Cautions {
  /** From here a swim in a wetsuit is a cold one (common practice, no source). */
  private static final double COLD_WATER = 16;

  private final List<Session> sessions;
  private final List<String> lines = new ArrayList<>();

  private Cautions(List<PlanWeek> weeks) {
    this.sessions =
        weeks.stream()
            .flatMap(week -> week.days().values().stream())
            .flatMap(day -> day.sessions().stream())
            .flatMap(RaceWords::chain)
            .toList();
  }

  /** The general ones, and those that the sessions of these weeks and the race call for. */
  static List<String> of(Plan plan, List<PlanWeek> weeks) {
    Cautions cautions = new Cautions(weeks);
    cautions.write(plan.event());
    return List.copyOf(cautions.lines);
  }

  private void write(Event event) {
    lines.add(
        "Stop and get help for chest pain or pressure, fainting, a racing or stumbling heart,"
            + " breathlessness that does not settle, confusion, or coughing up froth in the water."
            + " If it does not pass at once, call the local emergency number.");
    lines.add(
        "Pain that changes how you move ends the session. Pain in a bone, with swelling, at night or"
            + " worse the next morning is for a doctor or physiotherapist to look at before you"
            + " run again.");
    lines.add(
        "With fever, aches all over or anything on the chest do not train; tell your coach. A"
            + " doctor decides when you start again.");
    if (event.legs().swim() != null || any(session -> session.scene().openWater())) {
      lines.add(
          "Never swim in open water alone. Bright cap, tow float, someone who watches; keep to local"
              + " rules, flags and warnings, and stay out in lightning or when the water is closed.");
    }
    if (any(Cautions::cold)) {
      lines.add(
          "Cold water: go in slowly, get your breath before you swim, keep it short, get out when you"
              + " shiver or lose feeling in hands, and warm up slowly.");
    }
    if (any(session -> session.sport() == Sport.BIKE)) {
      lines.add(
          "On the road: helmet, lights, traffic law before any pace, and aero bars only where the"
              + " road is clear.");
    }
    if (any(session -> session.wear().practises("underwater"))) {
      lines.add("Never hold your breath under water without someone beside you.");
    }
    if (any(session -> session.wear().practises("descending"))) {
      lines.add("Descend within what you can see and brake for.");
    }
    lines.add(
        "Heat: slow down, shade, drink and cool. Goosebumps, headache, dizziness or confusion mean"
            + " stop, cool down and call for help.");
    lines.add(
        "Drink to your plan and thirst, and never so much that you weigh more after a session than"
            + " before it.");
    lines.add(
        "Take painkillers or new medicines in training or racing only after asking a doctor or"
            + " pharmacist.");
    lines.add(
        "Paces and watts are worked out from your tests and goals: a hard day, heat, hills or wind"
            + " make them wrong. Effort comes first.");
    lines.add(
        "Race rules and officials, local law, and doctors and physiotherapists who see you come"
            + " before anything written here. This is no medical advice.");
  }

  private boolean any(Predicate<Session> which) {
    return sessions.stream().anyMatch(which);
  }

  private static boolean cold(Session session) {
    Double water = session.scene().water();
    return session.scene().openWater() && water != null && water < COLD_WATER;
  }

  /** What the day's official warnings mean for the day. */
  static List<String> warnings(List<String> warnings) {
    return warnings.stream().map(Cautions::warning).toList();
  }

  private static String warning(String word) {
    return switch (word) {
      case "lightning" ->
          "Warning of lightning: while it stands, stay out of the water and off the road.";
      case "gale" -> "Warning of gales: while it stands, ride indoors and stay out of open water.";
      case "ice" -> "Warning of ice: while it stands, ride indoors and run where it is gritted.";
      case "smoke" -> "Warning of smoke: while it stands, train indoors or rest.";
      case "water-quality" -> "Warning about the water: swim in the pool until it is lifted.";
      default -> "Official warning: " + PlainWords.of(word) + ". Ask before you go.";
    };
  }
}
