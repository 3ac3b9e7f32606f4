package peakproof.begin;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;

/** The text of a plan above and below its weeks. */
final class PlanHead {
  private static final String WARNING =
      """
      # A skeleton: sessions of a usual kind, laid out by rule and knowing nothing of the person. A coach reads every
      # week, changes what does not fit, and goes on from the log (docs/new.md says where the numbers come from).
      # It clears nobody to train: pain, illness and doubt go to a doctor or physiotherapist first, and in the water the
      # race's rules and the local code come before this file. Never swim alone.
      """;

  private final Answers answers;
  private final Path file;

  PlanHead(Answers answers, Path file) {
    this.answers = answers;
    this.file = file;
  }

  /** A plan with one week and nothing in it, to have everything else read. */
  String bare() {
    String block = answers.text("block");
    return "plan:\n  format: 1\n"
        + athlete()
        + (block == null ? "" : "  " + block(block) + "\n")
        + "  weeks: [{starts: 2027-05-31}]\n";
  }

  String whole(Brief brief, Plan.Block block, Skeleton skeleton) {
    StringBuilder text = new StringBuilder(WARNING);
    text.append("plan:\n  format: 1\n").append(athlete());
    text.append("  ").append(block(block.peakWeeks() + "+" + block.taperWeeks())).append('\n');
    text.append("  weeks:\n");
    skeleton.write(text);
    return text.append(new Fuelling(brief).raceDay()).toString();
  }

  private String athlete() {
    StringBuilder text = new StringBuilder();
    text.append("  preset: ").append(answers.required("profile"));
    text.append("    # whose numbers the rules use\n");
    text.append("  athlete:\n    name: ").append(Scalar.of(answers.required("name"))).append('\n');
    one(text, "    born: ", answers.text("born"), "1988");
    String position = answers.text("position");
    one(
        text,
        "    bike: ",
        position == null ? null : "{position: " + Scalar.of(position) + "}",
        "{critical-power: 218W, position: aero}");
    text.append("    # experience: {years: 8, full: 3, half: 9}\n");
    text.append("    # mass: 62kg\n");
    text.append("    # heart-rate: {max: 182bpm, resting: 46bpm}\n");
    text.append("    # tests:\n");
    text.append("    #   - {date: 2027-05-08, swim: 400m, time: 6:28}\n");
    text.append("    #   - {date: 2027-05-02, bike: 20min, power: 231W}\n");
    text.append("    #   - {date: 2027-04-18, run: half-marathon, time: 1:41:30}\n");
    text.append(
        "    # health: {checked: 2027-02-10, contact: on file}    # stays with the coach\n");
    text.append("    available: ").append(available()).append('\n');
    text.append("    lately: ").append(lately());
    text.append("    # as stated; a log.yaml beside this file tells more\n");
    text.append("  event: ").append(Scalar.of(event())).append('\n');
    String goal = answers.text("goal");
    text.append(goal == null ? "  # goal: " + GOAL + "\n" : "  goal: " + goal(goal) + "\n");
    return text.toString();
  }

  private static final String GOAL =
      "{swim: 1:10:00, bike: 6:00:00, run: 3:50:00, transitions: 10min, total: 11:10:00}";

  private static void one(StringBuilder text, String key, @Nullable String value, String example) {
    String commented = key.replaceFirst("^( +)", "$1# ");
    text.append(value == null ? commented + example : key + value).append('\n');
  }

  private String available() {
    StringBuilder text = new StringBuilder("{");
    part(text, "hours", answers.text("hours"));
    String off = answers.text("days-off");
    if (off != null) {
      text.append(text.length() == 1 ? "" : ", ").append("days-off: ").append(days(off));
    }
    part(text, "weekday", answers.text("weekday"));
    return text.append('}').toString();
  }

  private String lately() {
    StringBuilder text = new StringBuilder("{");
    part(text, "hours", answers.text("weekly-hours"));
    for (String key : List.of("longest-ride", "longest-run", "longest-swim", "open-water")) {
      part(text, key, answers.text(key));
    }
    return text.append('}').toString();
  }

  private static void part(StringBuilder text, String key, @Nullable String value) {
    if (value != null) {
      text.append(text.length() == 1 ? "" : ", ");
      text.append(key).append(": ").append(Scalar.of(value));
    }
  }

  /** The event's file as the plan's folder sees it. */
  private String event() {
    Path named = Path.of(answers.required("event")).toAbsolutePath().normalize();
    Path folder = Objects.requireNonNull(file.toAbsolutePath().normalize().getParent());
    boolean related = Objects.equals(named.getRoot(), folder.getRoot());
    Path seen = related ? folder.relativize(named) : named;
    return seen.toString().replace('\\', '/');
  }

  static String days(String answer) {
    return "[" + String.join(", ", List.of(answer.strip().split("[ ,]+"))) + "]";
  }

  static String goal(String answer) {
    return "{" + NewEvent.listed(answer, List.of("swim", "bike", "run")) + "}";
  }

  private static String block(String answer) {
    String[] parts = answer.split("\\+", 2);
    return "block: {peak-weeks: " + parts[0] + ", taper-weeks: " + parts[1] + "}";
  }
}
