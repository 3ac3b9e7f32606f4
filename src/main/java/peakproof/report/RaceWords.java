package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Goal;
import peakproof.document.Plan;
import peakproof.document.PlanDay;
import peakproof.document.PlanWeek;
import peakproof.document.Session;
import peakproof.document.Sport;

/** What the race is like, what to eat and drink in it, and what to see to in its week. */
final class RaceWords {
  private RaceWords() {}

  /** Courses and rules, a line each. */
  static List<String> facts(Event event) {
    List<String> facts = new ArrayList<>();
    Event.Swim swim = event.swim();
    Double water = swim.temperature();
    line(
        facts,
        "Swim",
        length(event.legs().swim(), Sport.SWIM),
        swim.water(),
        water == null ? null : "water about " + Figures.number(water) + " °C",
        swim.direction() == null ? null : direction(swim.direction()),
        swim.start() == null ? null : swim.start() + " start",
        swim.wetsuit() == null ? null : wetsuit(swim.wetsuit()),
        swim.conditions().isEmpty() ? null : "expect " + PlainWords.listed(swim.conditions()));
    Event.Bike bike = event.bike();
    Boolean drafting = bike.drafting();
    Double zone = bike.draftZone();
    line(
        facts,
        "Bike",
        length(event.legs().bike(), Sport.BIKE),
        bike.course() == null ? null : bike.course().replace('-', ' '),
        metres(bike.climb(), " m of climbing"),
        drafting == null ? null : drafting ? "drafting allowed" : "no drafting",
        zone == null ? null : "stay " + Figures.number(zone) + " m behind the rider in front",
        aid(bike.aidEvery()));
    Event.Run run = event.run();
    line(
        facts,
        "Run",
        length(event.legs().run(), Sport.RUN),
        run.surface(),
        metres(run.climb(), " m of climbing"),
        aid(run.aidEvery()));
    Event.Weather weather = event.weather();
    Double air = weather.air();
    Double wind = weather.wind();
    line(
        facts,
        "Weather to expect",
        air == null ? null : Figures.number(air) + " °C",
        weather.humidity() == null ? null : Figures.percent(weather.humidity()) + " humidity",
        wind == null ? null : "wind about " + Math.round(3.6 * wind) + " km/h");
    return facts;
  }

  private static void line(List<String> facts, String label, @Nullable String... words) {
    String text = Figures.dotted(words);
    if (!text.isEmpty()) {
      facts.add(label + ": " + text);
    }
  }

  private static @Nullable String length(@Nullable Double metres, Sport sport) {
    return metres == null ? null : Figures.distance(metres, sport);
  }

  private static @Nullable String metres(@Nullable Double metres, String what) {
    return metres == null ? null : Figures.number(metres) + what;
  }

  private static @Nullable String aid(@Nullable Double every) {
    return every == null ? null : "aid about every " + Figures.distance(every, Sport.BIKE);
  }

  private static String direction(String word) {
    return switch (word) {
      case "straight" -> "a straight course";
      case "both" -> "turns to both sides";
      default -> word;
    };
  }

  private static String wetsuit(String word) {
    return word.equals("by-temperature")
        ? "wetsuits by the temperature of the day"
        : "wetsuits " + word;
  }

  /** Fuel, drink and caffeine of race day; empty when nothing is planned. */
  static List<String> fuelling(Plan plan) {
    Plan.RaceDay day = plan.raceDay();
    if (day == null) {
      return List.of();
    }
    Goal goal = plan.goal();
    List<String> lines = new ArrayList<>();
    hourly(lines, "On the bike", day.bikeFuel(), goal == null ? null : goal.bike());
    hourly(lines, "On the run", day.runFuel(), goal == null ? null : goal.run());
    Double carries = day.carries();
    if (carries != null && carries > 0) {
      lines.add("Start the bike with " + Figures.number(carries) + " l on board.");
    }
    Double caffeine = day.caffeine();
    if (caffeine != null && caffeine > 0) {
      lines.add(
          "Caffeine: "
              + Figures.number(caffeine)
              + " mg in all, only in forms you have tried in training.");
    }
    if (!lines.isEmpty()) {
      lines.add(
          "These are amounts to practise, not targets to force down: when your stomach sloshes, slow"
              + " down and drink less.");
    }
    return lines;
  }

  private static void hourly(
      List<String> lines, String leg, Session.@Nullable Fuel fuel, @Nullable Double seconds) {
    String hourly = fuel == null ? "" : SessionDetails.hourly(fuel);
    if (hourly.isEmpty()) {
      return;
    }
    Double carbohydrate = fuel == null ? null : fuel.carbohydrate();
    String inAll =
        seconds == null || carbohydrate == null
            ? ""
            : "; about "
                + Math.round(carbohydrate * seconds / 3600 / 10) * 10
                + " g over "
                + Figures.roughTime(seconds);
    lines.add(leg + ", an hour: " + hourly + inAll + ".");
  }

  /** What to see to in the last days: common practice, no source. */
  static List<String> week(Plan plan, List<PlanWeek> weeks) {
    List<String> list = new ArrayList<>();
    Plan.Travel travel = plan.travel();
    if (travel != null && travel.arrive() != null) {
      list.add(
          "Arrive by "
              + peakproof.fact.Words.weekday(travel.arrive().toLocalDate())
              + ", "
              + Figures.timeOfDay(travel.arrive().toLocalTime())
              + zones(travel.zones())
              + ".");
    }
    list.add("Read the race's own papers: start, cut-offs, rules, last changes. They come first.");
    list.add("Ask for the water temperature of the day and whether wetsuits are allowed.");
    list.add(
        "Bike: brakes, tyres, bolts, gears and battery looked over by midweek, then left alone.");
    List<String> kit = kit(weeks);
    if (!kit.isEmpty()) {
      list.add("Lay out what you trained in: " + Figures.listed(kit) + ".");
    }
    list.add("Nothing new on race day: no new shoes, food, drink or position.");
    if (plan.raceDay() != null && plan.raceDay().bikeFuel() != null) {
      list.add("Buy, pack and label food and drink for the whole race, with one spare.");
    }
    list.add("Bed early all week; the night before the race matters less than those before it.");
    list.add("Look at the swim exit, both ends of transition and the first turns of each course.");
    list.add("Tell your coach at once about illness, pain, or a night that went wrong.");
    Plan.RaceDay day = plan.raceDay();
    if (day != null && Boolean.TRUE.equals(day.wetsuitWorn())) {
      Double thickness = day.wetsuitMillimetres();
      list.add(
          "Wetsuit: planned"
              + (thickness == null ? "" : ", " + Figures.number(thickness) + " mm")
              + "; be ready to swim without it if the officials say so.");
    }
    if (day != null && day.warmUp() != null) {
      list.add("Warm-up on the day: " + Printable.of(day.warmUp()));
    }
    return list;
  }

  private static String zones(@Nullable Integer zones) {
    if (zones == null || zones == 0) {
      return "";
    }
    int hours = Math.abs(zones);
    return "; clocks there are "
        + hours
        + (hours == 1 ? " hour " : " hours ")
        + (zones > 0 ? "ahead of" : "behind")
        + " home";
  }

  private static List<String> kit(List<PlanWeek> weeks) {
    return List.of(
            "wetsuit", "race-bike", "race-helmet", "race-wheels", "race-clothing", "race-shoes")
        .stream()
        .filter(word -> weeks.stream().anyMatch(week -> worn(week, word)))
        .map(PlainWords::of)
        .toList();
  }

  private static boolean worn(PlanWeek week, String word) {
    return week.days().values().stream()
        .map(PlanDay::sessions)
        .flatMap(List::stream)
        .flatMap(RaceWords::chain)
        .map(session -> session.wear().kit())
        .anyMatch(kit -> kit != null && Set.copyOf(kit).contains(word));
  }

  /** A session and what follows straight after. */
  static Stream<Session> chain(Session session) {
    return Stream.iterate(session, each -> each != null, Session::then);
  }
}
