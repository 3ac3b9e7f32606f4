package peakproof.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What stands in a log, as {@link LogReader} reads it. */
final class LogSchema {
  private static final FormatSentences SENTENCES = FormatSentences.under("## Log");

  private LogSchema() {}

  static ObjectNode log(ObjectNode definitions) {
    definitions.set("day", day());
    SessionSchema.define(definitions, true);
    return new SchemaObject(SENTENCES)
        .key("format", SchemaKinds.format())
        .key("complete-since", SchemaKinds.date())
        .key("weeks", dated(SchemaKinds.words(Vocabulary.FOCUS)))
        .key("days", dated(SchemaObject.reference("day")))
        .required("format")
        .node();
  }

  private static ObjectNode dated(ObjectNode takes) {
    ObjectNode dated = takes.objectNode().put("type", "object");
    dated.putObject("patternProperties").set(SchemaKinds.datePattern(), takes);
    return dated.put("additionalProperties", false);
  }

  /** A day on one line, of which only its beginning is held to, or with keys of its own. */
  private static ObjectNode day() {
    ObjectNode day = whole();
    ObjectNode line =
        day.objectNode()
            .put("type", "string")
            .put(
                "pattern",
                "^\\s*(?:swim|bike|run|strength|other|rest|missed|sleep|fatigue|soreness|mood|stress"
                    + "|resting-heart-rate)(?![a-z-])");
    line.put(
        "patternErrorMessage",
        "expected the parts of a day, such as run 1h31 15.9km rpe4; sleep 7h15");
    ObjectNode either = day.objectNode();
    either.putObject("if").put("type", "object");
    either.set("then", day);
    either.set("else", line);
    return either;
  }

  private static ObjectNode whole() {
    SchemaObject missed =
        new SchemaObject(SENTENCES.within("missed"))
            .key("sessions", SchemaKinds.count())
            .key("because", SchemaKinds.words(Vocabulary.MISSED));
    SchemaObject morning =
        new SchemaObject(SENTENCES.within("morning"))
            .key("sleep", SchemaKinds.span())
            .keys(List.of("fatigue", "soreness", "mood", "stress"), SchemaKinds.rating())
            .key("resting-heart-rate", SchemaKinds.units(Units.HEART_RATE));
    SchemaObject pain =
        new SchemaObject(SENTENCES.within("pain"))
            .key("site", SchemaKinds.text("left achilles"))
            .key("level", SchemaKinds.rating())
            .key("when", SchemaKinds.words(Vocabulary.PAIN_WHEN))
            .key("next-morning", SchemaKinds.words(Vocabulary.NEXT_MORNING))
            .key("signs", SchemaKinds.list(SchemaKinds.words(Vocabulary.PAIN_SIGNS)))
            .required("site");
    SchemaObject ill =
        new SchemaObject(SENTENCES.within("ill"))
            .key("signs", SchemaKinds.list(SchemaKinds.words(Vocabulary.ILL_SIGNS)))
            .key("fever", SchemaKinds.flag())
            .key("kind", SchemaKinds.words(Vocabulary.ILLNESS))
            .key("over", SchemaKinds.date());
    ObjectNode resting = SchemaObject.having("rest");
    resting.withObject("/properties/rest").putArray("enum").add("yes").add("true").add(true);
    ObjectNode nothingDone = resting.objectNode();
    nothingDone.withObject("/properties/sessions").put("maxItems", 0);
    return new SchemaObject(SENTENCES)
        .key("sessions", SchemaKinds.list(SchemaObject.reference("session")))
        .key("rest", SchemaKinds.flag())
        .key("missed", missed.node())
        .key("morning", morning.node())
        .key("pain", SchemaKinds.list(pain.node()))
        .key("ill", ill.node())
        .key("medicine", SchemaKinds.list(SchemaKinds.words(Vocabulary.MEDICINE)))
        .when(resting, nothingDone)
        .node()
        .put("minProperties", 1);
  }
}
