package peakproof.document;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** What stands in an event, as {@link EventReader} reads it. */
final class EventSchema {
  private static final FormatSentences SENTENCES = FormatSentences.under("## Event");

  private EventSchema() {}

  static ObjectNode event() {
    SchemaObject event = new SchemaObject(SENTENCES);
    SchemaObject swim =
        new SchemaObject(event.within("swim"))
            .key("water", SchemaKinds.words(Vocabulary.WATER))
            .key("temperature", SchemaKinds.units(Units.TEMPERATURE))
            .key("direction", SchemaKinds.words(Vocabulary.DIRECTION))
            .key("wetsuit", SchemaKinds.words(Vocabulary.WETSUIT))
            .key("start", SchemaKinds.words(Vocabulary.START))
            .key("starters", SchemaKinds.count())
            .key("conditions", SchemaKinds.list(SchemaKinds.words(Vocabulary.SWIM_CONDITIONS)));
    SchemaObject bike =
        new SchemaObject(event.within("bike"))
            .key("climb", SchemaKinds.units(Units.LENGTH))
            .key("drafting", SchemaKinds.flag())
            .key("draft-zone", SchemaKinds.units(Units.LENGTH))
            .key("aid-every", SchemaKinds.distance())
            .key("course", SchemaKinds.words(Vocabulary.BIKE_COURSE));
    SchemaObject run =
        new SchemaObject(event.within("run"))
            .key("climb", SchemaKinds.units(Units.LENGTH))
            .key("descent", SchemaKinds.units(Units.LENGTH))
            .key("surface", SchemaKinds.words(Vocabulary.RUN_SURFACE))
            .key("aid-every", SchemaKinds.distance());
    SchemaObject weather =
        new SchemaObject(event.within("weather"))
            .key("air", SchemaKinds.units(Units.TEMPERATURE))
            .key("humidity", SchemaKinds.share())
            .key("wind", SchemaKinds.units(Units.SPEED))
            .key("wbgt", SchemaKinds.units(Units.TEMPERATURE));
    SchemaObject cutOffs =
        new SchemaObject(event.within("cut-offs"))
            .key("swim", SchemaKinds.duration())
            .key("bike", SchemaKinds.duration())
            .key("finish", SchemaKinds.duration());
    return event
        .key("name", SchemaKinds.text("Saltmarsh Long Course"))
        .key("date", SchemaKinds.date())
        .key("start", SchemaKinds.time())
        .key("legs", legs())
        .key("distance", SchemaKinds.words(Vocabulary.DISTANCE))
        .key("minimum-age", SchemaKinds.count())
        .key("swim", swim.node())
        .key("bike", bike.node())
        .key("run", run.node())
        .key("weather", weather.node())
        .key("cut-offs", cutOffs.node())
        .key("rule-book", ruleBook(event.within("rule-book")))
        .required("name", "date", "legs")
        .node();
  }

  static ObjectNode legs() {
    return new SchemaObject(SENTENCES.within("legs"))
        .key("swim", SchemaKinds.distance())
        .key("bike", SchemaKinds.distance())
        .key("run", SchemaKinds.distance())
        .node();
  }

  private static ObjectNode ruleBook(FormatSentences sentences) {
    ObjectNode own = SchemaObject.having("name");
    own.withObject("/properties/name").put("const", "own");
    ObjectNode either = own.objectNode();
    either
        .putArray("anyOf")
        .add(SchemaObject.having("forbidden-above"))
        .add(SchemaObject.having("required-below"));
    return new SchemaObject(sentences)
        .key("name", SchemaKinds.words(Vocabulary.RULE_BOOK))
        .key("edition", SchemaKinds.words(Vocabulary.EDITION))
        .key("forbidden-above", SchemaKinds.units(Units.TEMPERATURE))
        .key("required-below", SchemaKinds.units(Units.TEMPERATURE))
        .required("name")
        .when(own, either)
        .node();
  }
}
