package peakproof.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What stands in a house file, as {@link HouseReader} reads it. */
final class HouseSchema {
  private static final FormatSentences SENTENCES = FormatSentences.under("## House");

  private HouseSchema() {}

  static ObjectNode house() {
    SchemaObject house = new SchemaObject(SENTENCES);
    ObjectNode severity = SchemaKinds.words(Vocabulary.SEVERITY);
    SchemaObject words =
        new SchemaObject(house.within("words"))
            .keys(List.of("title", "why", "do", "care", "not-for"), SchemaKinds.text());
    SchemaObject silenced =
        new SchemaObject(house.within("silenced"))
            .key("rule", SchemaKinds.text("swim-bilateral"))
            .key("because", SchemaKinds.text("we teach it in winter"))
            .required("rule", "because");
    SchemaObject lists =
        new SchemaObject(house.within("lists"))
            .keys(List.of("kit", "practise"), SchemaKinds.list(SchemaKinds.text()));
    return house
        .key("format", SchemaKinds.format())
        .key("name", SchemaKinds.text("Tidemill Tri"))
        .key("preset", SchemaKinds.words(Vocabulary.PRESET))
        .key("own-rules", SchemaKinds.list(SchemaKinds.text("our-rules")))
        .key("settings", SchemaObject.free(SchemaObject.free(SchemaKinds.text())))
        .keys(List.of("severity", "at-most"), SchemaObject.free(severity))
        .key("words", SchemaObject.free(words.node()))
        .key("use", SchemaKinds.list(SchemaKinds.text()))
        .key("silenced", SchemaKinds.list(silenced.node()))
        .key("lists", lists.node())
        .key("sessions", sessions())
        .required("format")
        .node();
  }

  private static ObjectNode sessions() {
    ObjectNode sessions = SchemaObject.free(SchemaKinds.setLine(Sport.SWIM, false));
    sessions
        .putObject("propertyNames")
        .put("pattern", "^" + HouseReader.SESSION_NAME.pattern() + "$");
    return sessions;
  }
}
