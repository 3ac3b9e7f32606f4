package peakproof.document;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads a plan. */
final class PlanReader {
  private final Desk desk;

  PlanReader(Desk desk) {
    this.desk = desk;
  }

  /**
   * The plan; null when a required key is missing or wrong.
   *
   * @param event the event's content, or null when it could not be found
   */
  @Nullable Plan read(Node node, @Nullable Node event) {
    Fields fields = desk.fields(node, "the plan");
    if (fields == null) {
      return null;
    }
    Format.check(fields);
    var preset = fields.read("preset", Vocabulary.PRESET::read);
    fields.demand("athlete", "{name: Tove Lindqvist}");
    Node athleteNode = fields.node("athlete");
    Athlete athlete = athleteNode == null ? null : new AthleteReader(desk).read(athleteNode);
    fields.demand("event", "events/saltmarsh.yaml");
    Event race = event == null ? null : new EventReader(desk).read(event);
    fields.text("log");
    Goal goal = goal(fields);
    Plan.Block block = block(fields);
    fields.demand("weeks", "[{starts: 2027-05-31}]");
    List<PlanWeek> weeks = new WeeksReader(desk).read(fields.list("weeks"));
    Plan.RaceDay raceDay = new RaceDayReader(desk).read(fields);
    Plan.Travel travel = travel(fields);
    List<Plan.Change> changes = desk.each(fields.list("changes"), this::change);
    Set<String> aims = fields.words("aims", Vocabulary.AIM);
    var settings = SettingsReader.read(fields, desk);
    List<Plan.Accepted> accepted = desk.each(fields.list("accepted"), this::accepted);
    fields.finish();
    return athlete == null || race == null
        ? null
        : new Plan(
            fields.pointer(),
            preset,
            athlete,
            race,
            goal,
            block,
            weeks,
            raceDay,
            travel,
            changes,
            aims,
            settings,
            accepted);
  }

  private @Nullable Goal goal(Fields owner) {
    Fields fields = owner.mapping("goal", "'goal'");
    if (fields == null) {
      return null;
    }
    Goal goal =
        new Goal(
            fields.pointer(),
            fields.read("swim", Quantity::duration),
            fields.read("bike", Quantity::duration),
            fields.read("run", Quantity::duration),
            fields.read("transitions", Quantity::duration),
            fields.read("total", Quantity::duration),
            fields.read("bike-effort", PlanReader::effort));
    fields.finish();
    return goal;
  }

  private static Quantity<Target> effort(String text) {
    Quantity<Target> target = Quantity.target(text);
    return target instanceof Quantity.Of<Target> of && of.value() instanceof Target.Pace
        ? new Quantity.NotThat<>(
            "'" + text + "' is a pace",
            "expected a heart rate, power or rating",
            "write it such as 70%maxhr, 205W or rpe5")
        : target;
  }

  private static Plan.@Nullable Block block(Fields owner) {
    Fields fields = owner.mapping("block", "'block'");
    if (fields == null) {
      return null;
    }
    Plan.Block block =
        new Plan.Block(
            fields.pointer(),
            fields.read("peak-weeks", Quantity::count),
            fields.read("taper-weeks", Quantity::count));
    fields.finish();
    return block;
  }

  private static Plan.@Nullable Travel travel(Fields owner) {
    Fields fields = owner.mapping("travel", "'travel'");
    if (fields == null) {
      return null;
    }
    Plan.Travel travel =
        new Plan.Travel(
            fields.pointer(),
            fields.read("arrive", Quantity::dateTime),
            fields.read("zones", Quantity::signed));
    fields.finish();
    return travel;
  }

  private Plan.@Nullable Change change(Node node) {
    Fields fields = desk.fields(node, "a change");
    if (fields == null) {
      return null;
    }
    var date = fields.require("date", "2027-05-20", Quantity::date);
    var what = fields.require("what", "saddle", Vocabulary.CHANGE::read);
    fields.finish();
    return date == null || what == null ? null : new Plan.Change(fields.pointer(), date, what);
  }

  private Plan.@Nullable Accepted accepted(Node node) {
    Fields fields = desk.fields(node, "an accepted finding");
    if (fields == null) {
      return null;
    }
    var rule = fields.require("rule", "swim-open-water-weekly", Quantity.Of::new);
    var week = fields.read("week", WeekReader::monday);
    var day = fields.read("day", Quantity::date);
    var because = fields.require("because", "the lake is closed", Quantity.Of::new);
    var by = fields.text("by");
    var until = fields.read("until", Quantity::date);
    fields.finish();
    if (fields.has("week") && fields.has("day")) {
      desk.fault(
          fields.keyPlace("day"),
          "this names both a week and a day",
          "expected 'week', 'day', or neither for the whole plan",
          "leave one of the two out");
    }
    return rule == null || because == null
        ? null
        : new Plan.Accepted(fields.pointer(), rule, week, day, because, by, until);
  }
}
