package peakproof.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What stands in a plan, as {@link PlanReader} reads it. */
final class PlanSchema {
  private static final FormatSentences SENTENCES = FormatSentences.under("## Plan");
  private static final FormatSentences WEEK = FormatSentences.under("### Weeks and days");
  private static final FormatSentences RACE = FormatSentences.under("### Goal, block and race day");

  private PlanSchema() {}

  static ObjectNode plan(ObjectNode definitions) {
    definitions.set("event", EventSchema.event());
    definitions.set("athlete", AthleteSchema.athlete());
    definitions.set("week", week());
    definitions.set("day", day());
    SessionSchema.define(definitions, false);
    SchemaObject goal =
        new SchemaObject(RACE.within("goal"))
            .keys(List.of("swim", "bike", "run", "transitions", "total"), SchemaKinds.duration())
            .key("bike-effort", SchemaKinds.effort());
    SchemaObject block =
        new SchemaObject(RACE.within("block"))
            .keys(List.of("peak-weeks", "taper-weeks"), SchemaKinds.count());
    SchemaObject travel =
        new SchemaObject(RACE.within("travel"))
            .key("arrive", SchemaKinds.dateTime())
            .key("zones", SchemaKinds.signed());
    SchemaObject change =
        new SchemaObject(RACE.within("changes"))
            .key("date", SchemaKinds.date())
            .key("what", SchemaKinds.words(Vocabulary.CHANGE))
            .required("date", "what");
    SchemaObject plan = new SchemaObject(SENTENCES);
    SchemaObject raced = new SchemaObject(RACE);
    raced
        .key("goal", goal.node())
        .key("block", block.node())
        .key("race-day", raceDay())
        .key("travel", travel.node())
        .key("changes", SchemaKinds.list(change.node()))
        .key("aims", SchemaKinds.list(SchemaKinds.words(Vocabulary.AIM)));
    ObjectNode node =
        plan.key("format", SchemaKinds.format())
            .key("preset", SchemaKinds.words(Vocabulary.PRESET))
            .key("athlete", SchemaObject.reference("athlete"))
            .key("event", event())
            .key("log", SchemaKinds.text("log.yaml"))
            .key("weeks", SchemaKinds.list(SchemaObject.reference("week")))
            .key("settings", SchemaObject.free(SchemaObject.free(SchemaKinds.text())))
            .key("accepted", SchemaKinds.list(accepted()))
            .required("format", "athlete", "event", "weeks")
            .node();
    node.withObject("/properties").setAll(raced.node().withObject("/properties"));
    return node;
  }

  /** The event's file or the event itself, each told on its own when it is wrong. */
  private static ObjectNode event() {
    ObjectNode event = SchemaObject.reference("event").objectNode();
    event.putObject("if").put("type", "object");
    event.set("then", SchemaObject.reference("event"));
    event.set("else", SchemaKinds.text("../events/saltmarsh.yaml"));
    return event;
  }

  private static ObjectNode raceDay() {
    SchemaObject day = new SchemaObject(RACE.within("race-day"));
    SchemaObject fuel =
        new SchemaObject(day.within("fuel"))
            .keys(List.of("bike", "run"), SchemaObject.reference("fuel"));
    SchemaObject wetsuit =
        new SchemaObject(day.within("wetsuit"))
            .key("worn", SchemaKinds.flag())
            .key("thickness", SchemaKinds.units(Units.THICKNESS));
    return day.key("fuel", fuel.node())
        .key("caffeine", SchemaKinds.units(Units.MILLIGRAMS))
        .key("medicines", SchemaKinds.list(SchemaKinds.words(Vocabulary.MEDICINE)))
        .key("warm-up", SchemaKinds.text("8min in the water"))
        .key("wetsuit", wetsuit.node())
        .key("carries", SchemaKinds.units(Units.VOLUME))
        .key("first-use", SchemaKinds.list(SchemaKinds.text()))
        .node();
  }

  private static ObjectNode accepted() {
    return new SchemaObject(FormatSentences.under("### Settings and accepted findings"))
        .key("rule", SchemaKinds.text("swim-open-water-weekly"))
        .keys(List.of("week", "day", "until"), SchemaKinds.date())
        .key("because", SchemaKinds.text("the lake is closed"))
        .key("by", SchemaKinds.text())
        .required("rule", "because")
        .notBoth("week", "day")
        .node();
  }

  private static ObjectNode week() {
    SchemaObject days =
        new SchemaObject(WEEK.within("days")).keys(Dates.WEEKDAYS, SchemaObject.reference("day"));
    SchemaObject without =
        new SchemaObject(WEEK.within("without"))
            .keys(Vocabulary.WITHOUT.all(), SchemaKinds.text("pool closed"));
    return new SchemaObject(WEEK)
        .keys(List.of("starts", "like"), SchemaKinds.date())
        .key("focus", SchemaKinds.words(Vocabulary.FOCUS))
        .key("hours", SchemaKinds.duration())
        .key("note", SchemaKinds.text())
        .key("without", without.node())
        .key("away", SchemaKinds.words(Vocabulary.AWAY))
        .keys(List.of("days", "but"), days.node())
        .required("starts")
        .beside("but", "like")
        .notBoth("like", "days")
        .node();
  }

  /** The word rest, or a list; each of its lines is told as what its first word makes it. */
  private static ObjectNode day() {
    ObjectNode rest =
        new SchemaObject(WEEK)
            .key("rest", SchemaKinds.flag())
            .key("note", SchemaKinds.text())
            .node();
    ObjectNode warning =
        new SchemaObject(WEEK).key("warning", SchemaKinds.words(Vocabulary.WARNING)).node();
    ObjectNode warned = choice(holding("warning"), warning, SchemaObject.reference("session"));
    ObjectNode resting = choice(holding("rest"), rest, warned);
    ObjectNode isText = rest.objectNode().put("type", "string");
    ObjectNode item = choice(isText, isText.deepCopy().put("const", "rest"), resting);
    return choice(
        isText.deepCopy(), isText.deepCopy().put("const", "rest"), SchemaKinds.list(item));
  }

  private static ObjectNode holding(String key) {
    return SchemaObject.having(key).put("type", "object");
  }

  private static ObjectNode choice(ObjectNode when, ObjectNode then, ObjectNode otherwise) {
    ObjectNode choice = when.objectNode();
    choice.set("if", when);
    choice.set("then", then);
    choice.set("else", otherwise);
    return choice;
  }
}
