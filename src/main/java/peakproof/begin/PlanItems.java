package peakproof.begin;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Documents;

/** What to know of an athlete before weeks can be written. */
final class PlanItems {
  static final List<Item> ALL =
      List.of(
          Item.needed(
              "name",
              "NAME",
              "The athlete's name.",
              "Who is the plan for?",
              "Tove Lindqvist",
              PlanItems::name),
          Item.needed(
              "event",
              "FILE",
              "The race's file; 'peakproof new event' starts one.",
              "Which race? Its file, from this folder",
              "plans/events/saltmarsh.yaml",
              PlanItems::event),
          Item.needed(
              "profile",
              "WORD",
              "first-timer, experienced or masters: how fast the weeks grow, how hard they are.",
              "Is this a first-timer at the distance, experienced, or masters?",
              "experienced",
              PlanItems::profile),
          lately(
              "weekly-hours",
              "hours",
              "Hours a week of the last four weeks.",
              "How many hours a week did the last four weeks have?",
              "9h30"),
          lately(
              "longest-ride",
              "longest-ride",
              "The longest ride of the last four weeks.",
              "How long was the longest ride of the last four weeks?",
              "3h30"),
          lately(
              "longest-run",
              "longest-run",
              "The longest run of the last 30 days.",
              "How long was the longest run of the last 30 days?",
              "1h30"),
          Item.optional(
              "longest-swim",
              "DISTANCE",
              "The longest swim without a rest lately.",
              "How far did they swim without a rest lately?",
              "1500m",
              null,
              Item.athlete(answer -> "lately: {longest-swim: " + Scalar.of(answer) + "}")),
          Item.optional(
              "open-water",
              "DATE",
              "The last swim in open water.",
              "When was the last swim in open water?",
              "2027-05-02",
              null,
              Item.athlete(answer -> "lately: {open-water: " + Scalar.of(answer) + "}")),
          Item.optional(
              "hours",
              "HOURS",
              "Hours a week there is time for; else a third more than lately.",
              "How many hours a week is there time for?",
              "12h",
              null,
              Item.athlete(answer -> "available: {hours: " + Scalar.of(answer) + "}")),
          Item.optional(
              "days-off",
              "DAYS",
              "Days without training, such as fri or mon,fri.",
              "Which days are off, such as fri or mon,fri?",
              "fri",
              "fri",
              Item.athlete(answer -> "available: {days-off: " + PlanHead.days(answer) + "}")),
          Item.optional(
              "weekday",
              "DURATION",
              "The longest slot on a weekday; else any.",
              "How long can a session on a weekday be?",
              "2h",
              null,
              Item.athlete(answer -> "available: {weekday: " + Scalar.of(answer) + "}")),
          Item.optional(
              "goal",
              "TIMES",
              "Goal times of swim, bike and run, such as 1:10:00/6:00:00/3:50:00.",
              "Which goal times, swim/bike/run?",
              "1:10:00/6:00:00/3:50:00",
              null,
              Item.plan(answer -> "goal: " + PlanHead.goal(answer))),
          Item.optional(
              "born",
              "YEAR",
              "The year of birth, or the date.",
              "When were they born?",
              "1988",
              null,
              Item.athlete(answer -> "born: " + Scalar.of(answer))),
          Item.optional(
              "position",
              "WORD",
              "How the race is ridden: aero, drops or hoods.",
              "How will they sit on the bike in the race: aero, drops or hoods?",
              "aero",
              null,
              Item.athlete(answer -> "bike: {position: " + Scalar.of(answer) + "}")),
          Item.optional(
              "block",
              "P+T",
              "Peak and taper weeks, such as 3+2.",
              "How many peak and taper weeks?",
              "3+2",
              "3+2",
              PlanItems::block),
          Item.optional(
              "starts",
              "DATE",
              "The Monday of the first week; else eight weeks in all.",
              "On which Monday does it start? Without an answer: eight weeks in all",
              "2027-05-10",
              null,
              PlanItems::monday));

  private static final String WEEKS = "  weeks: [{starts: 2027-05-31}]\n";

  private PlanItems() {}

  private static Item lately(
      String name, String key, String meaning, String question, String example) {
    return Item.needed(
        name,
        "DURATION",
        meaning,
        question,
        example,
        Item.athlete(answer -> "lately: {" + key + ": " + Scalar.of(answer) + "}"));
  }

  private static @Nullable String name(String answer) {
    return read("  athlete: {name: " + Scalar.of(answer) + "}\n", WEEKS);
  }

  private static @Nullable String read(String athlete, String weeks) {
    String event = "  event: {name: B, date: 2027-07-04, legs: {swim: 1km}}\n";
    return Item.first(
        Documents.drafted("plan:\n  format: 1\n" + athlete + event + weeks, null, null).faults());
  }

  private static @Nullable String event(String answer) {
    String plan =
        "plan:\n  format: 1\n  athlete: {name: A}\n  event: " + Scalar.of(answer) + "\n" + WEEKS;
    return Item.first(Documents.readAs(Path.of("plan.yaml"), plan, null).faults());
  }

  private static @Nullable String profile(String answer) {
    return Profile.of(answer) == null
        ? "'"
            + answer
            + "' is no profile; expected first-timer, experienced or masters; write one of them"
        : null;
  }

  private static @Nullable String block(String answer) {
    return answer.matches("[1-4]\\+[1-4]")
        ? null
        : "'"
            + answer
            + "' is no block; expected 1 to 4 peak weeks, '+' and 1 to 4 taper weeks; write 3+2";
  }

  private static @Nullable String monday(String answer) {
    return read("  athlete: {name: A}\n", "  weeks: [{starts: " + Scalar.of(answer) + "}]\n");
  }
}
