package peakproof.begin;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.document.Documents;

/** An event file: the race, its legs and its rules. */
public final class NewEvent implements Beginning {
  /** The usual lengths of the four distances, in metres and kilometres as races announce them. */
  private static final Map<String, String> LENGTHS =
      Map.of(
          "full", "3.8km/180km/42.2km",
          "half", "1.9km/90km/21.1km",
          "standard", "1500m/40km/10km",
          "sprint", "750m/20km/5km");

  private static final String HINTS =
      """
        # What else the audit can use, once the race has published it (docs/format.md has every key):
        # minimum-age: 18
        # bike: {climb: 1250m, drafting: no, aid-every: 35km, course: closed-loop}
        # run: {climb: 140m, descent: 140m, surface: road, aid-every: 2.5km}
        # weather: {air: 23C, humidity: 60%, wind: 4m/s}
        # rule-book: {name: world-triathlon, edition: later}
      """;

  @Override
  public List<Item> items() {
    return List.of(
        Item.needed(
            "name",
            "NAME",
            "The race's name.",
            "What is the race called?",
            "Saltmarsh Long Course",
            key("name")),
        Item.needed(
            "date",
            "DATE",
            "Race day, year-month-day.",
            "On what day is it?",
            "2027-07-04",
            key("date")),
        Item.needed(
            "distance",
            "WORD|LENGTHS",
            "full, half, standard or sprint, or three lengths such as 1.9km/90km/21.1km.",
            "How long is it? full, half, standard, sprint, or swim/bike/run",
            "full, or 3km/120km/30km",
            Item.event(answer -> legs(answer))),
        choice("water", "WORD", "lake, sea, river or pool.", "Where is the swim?", "lake"),
        choice(
            "wetsuit",
            "WORD",
            "allowed, forbidden, required or by-temperature.",
            "Wetsuits: allowed, forbidden, required or by-temperature?",
            "by-temperature"),
        choice("swim-start", "WORD", "mass, wave or rolling.", "How does the swim start?", null),
        swim("temperature", "TEMPERATURE", "Of the water.", "How warm is the water?", "17.5C"),
        swim("starters", "N", "How many start together.", "How many start together?", "900"),
        Item.optional(
            "start",
            "TIME",
            "When the first wave starts.",
            "At what time does it start?",
            "06:30",
            null,
            key("start")),
        Item.optional(
            "draft-zone",
            "LENGTH",
            "How far to stay behind another bike; none where drafting is allowed.",
            "How long is the draft zone on the bike? none where drafting is allowed",
            "12m",
            null,
            Item.event(NewEvent::bike)),
        Item.optional(
            "cut-offs",
            "TIMES",
            "Time limits from the start after swim, bike and run, such as 2:20:00/10:30:00/17:00:00.",
            "What are the time limits after swim, bike and run, from the start?",
            "2:20:00/10:30:00/17:00:00",
            null,
            Item.event(NewEvent::cutOffs)));
  }

  private static Function<String, @Nullable String> key(String key) {
    return Item.event(answer -> key + ": " + Scalar.of(answer));
  }

  private static Item choice(
      String name, String label, String words, String question, @Nullable String fallback) {
    String key = name.equals("swim-start") ? "start" : name;
    return Item.optional(
        name,
        label,
        "The swim: " + words,
        question,
        fallback == null ? "mass" : fallback,
        fallback,
        Item.event(answer -> "swim: {" + key + ": " + Scalar.of(answer) + "}"));
  }

  private static Item swim(
      String name, String label, String meaning, String question, String example) {
    return Item.optional(
        name,
        label,
        meaning,
        question,
        example,
        null,
        Item.event(answer -> "swim: {" + name + ": " + Scalar.of(answer) + "}"));
  }

  /** The legs by a word or as three lengths; whatever else it is the reader says. */
  private static String legs(String answer) {
    String lengths = LENGTHS.getOrDefault(answer.strip(), answer);
    if (!lengths.contains("/")) {
      return "distance: " + Scalar.of(answer);
    }
    return "legs: {" + listed(lengths, List.of("swim", "bike", "run")) + "}";
  }

  private static String cutOffs(String answer) {
    return "cut-offs: {" + listed(answer, List.of("swim", "bike", "finish")) + "}";
  }

  private static String bike(String answer) {
    return answer.equals("none")
        ? "bike: {drafting: yes}"
        : "bike: {drafting: no, draft-zone: " + Scalar.of(answer) + "}";
  }

  /** {@code swim: A, bike: B, run: C} of {@code A/B/C}; a part too many is left to the reader. */
  static String listed(String answer, List<String> keys) {
    String[] parts = answer.split("/", keys.size());
    StringBuilder listed = new StringBuilder();
    for (int i = 0; i < keys.size(); i++) {
      String value = i < parts.length ? parts[i] : "";
      listed.append(i == 0 ? "" : ", ").append(keys.get(i)).append(": ").append(Scalar.of(value));
    }
    return listed.toString();
  }

  @Override
  public Draft draft(Answers answers) {
    String text = text(answers);
    String fault = Item.first(Documents.drafted(PLAN, text, null).faults());
    return fault == null
        ? new Draft.Written(
            text,
            List.of("Check it against the race's own rules of the day; they win over this file."))
        : new Draft.Refused(List.of(fault));
  }

  private static final String PLAN =
      "plan: {format: 1, athlete: {name: A}, event: event.yaml, weeks: [{starts: 2027-05-31}]}\n";

  private static String text(Answers answers) {
    StringBuilder text = new StringBuilder();
    text.append("# The race. The race's own rules of the day win over anything written here.\n");
    text.append("event:\n");
    line(text, "name", answers.text("name"));
    line(text, "date", answers.text("date"));
    line(text, "start", answers.text("start"));
    String distance = answers.required("distance").strip();
    text.append("  ").append(legs(distance)).append('\n');
    if (LENGTHS.containsKey(distance)) {
      line(text, "distance", distance);
    }
    StringBuilder swim = new StringBuilder();
    for (String key : List.of("water", "temperature", "wetsuit", "swim-start", "starters")) {
      String value = answers.text(key);
      if (value != null) {
        swim.append(swim.isEmpty() ? "" : ", ")
            .append(key.equals("swim-start") ? "start" : key)
            .append(": ")
            .append(Scalar.of(value));
      }
    }
    text.append("  swim: {").append(swim).append("}\n");
    String zone = answers.text("draft-zone");
    text.append(zone == null ? "" : "  " + bike(zone) + "\n");
    String limits = answers.text("cut-offs");
    text.append(limits == null ? "" : "  " + cutOffs(limits) + "    # from the start\n");
    return text.append(HINTS).toString();
  }

  private static void line(StringBuilder text, String key, @Nullable String value) {
    if (value != null) {
      text.append("  ").append(key).append(": ").append(Scalar.of(value)).append('\n');
    }
  }
}
