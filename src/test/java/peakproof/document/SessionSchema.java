package peakproof.document;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Stream;

/** What stands in a session of a plan or a log, as {@link SessionReader} reads it. */
final class SessionSchema {
  private static final FormatSentences SENTENCES = FormatSentences.under("### Sessions");
  private static final List<String> SPORTS = Stream.of(Sport.values()).map(Sport::word).toList();

  private final boolean log;

  private SessionSchema(boolean log) {
    this.log = log;
  }

  /** Adds the definitions of a session, and of those that follow straight after one. */
  static void define(ObjectNode definitions, boolean log) {
    SessionSchema schema = new SessionSchema(log);
    definitions.set(
        "session",
        schema.first().oneOf(Stream.concat(SPORTS.stream(), Stream.of("race")).toList()).node());
    definitions.set(
        "after-swim",
        schema
            .session(List.of(Sport.BIKE, Sport.RUN))
            .oneOf(List.of("bike", "run"))
            .beside("then", "bike")
            .node());
    definitions.set("after-bike", schema.session(List.of(Sport.RUN)).required("run").node());
    definitions.set("fuel", fuel());
  }

  /** A session that follows no other: of any sport, or a race. */
  private SchemaObject first() {
    return session(List.of(Sport.values()))
        .key("for", SchemaKinds.list(SchemaKinds.words(Vocabulary.STRENGTH_FOR)))
        .key("load", SchemaKinds.words(Vocabulary.LOAD))
        .key("new", SchemaKinds.flag())
        .key("race", SchemaKinds.text("Reedmere Sprint"))
        .key("effort", SchemaKinds.words(Vocabulary.RACED))
        .key("legs", EventSchema.legs())
        .beside("for", "strength")
        .beside("load", "strength")
        .beside("new", "strength")
        .beside("effort", "race")
        .beside("legs", "race")
        .beside("then", "swim", "bike")
        .when(SchemaObject.having("swim"), then("after-swim"));
  }

  private SchemaObject session(List<Sport> sports) {
    SchemaObject session = new SchemaObject(SENTENCES);
    sports.forEach(sport -> session.key(sport.word(), work(sport)));
    scene(session);
    session
        .key("kit", SchemaKinds.list(SchemaKinds.openWords(Vocabulary.KIT)))
        .key("practise", SchemaKinds.list(SchemaKinds.openWords(Vocabulary.PRACTISE)))
        .key("aero", SchemaKinds.span())
        .key("fuel", SchemaObject.reference("fuel"))
        .keys(List.of("fasted", "heat", "test", "optional"), SchemaKinds.flag())
        .key("at", SchemaKinds.timeOfDay())
        .key("purpose", SchemaKinds.words(Vocabulary.PURPOSE))
        .key("medicine", SchemaKinds.words(Vocabulary.MEDICINE))
        .key("note", SchemaKinds.text());
    if (log) {
      measured(session);
    }
    if (sports.contains(Sport.BIKE)) {
      session
          .key("then", JsonNodeFactory.instance.objectNode())
          .when(SchemaObject.having("bike"), then("after-bike"));
    }
    return session;
  }

  private ObjectNode work(Sport sport) {
    return switch (sport) {
      case STRENGTH -> SchemaKinds.strength();
      case OTHER -> SchemaKinds.other();
      default -> SchemaKinds.setLine(sport, true);
    };
  }

  private static void scene(SchemaObject session) {
    session
        .key("where", SchemaKinds.words(Vocabulary.WHERE))
        .key("company", SchemaKinds.words(Vocabulary.COMPANY))
        .keys(List.of("water", "air"), SchemaKinds.units(Units.TEMPERATURE))
        .keys(List.of("climb", "descent"), SchemaKinds.units(Units.LENGTH))
        .key("light", SchemaKinds.words(Vocabulary.LIGHT))
        .key("traffic", SchemaKinds.words(Vocabulary.TRAFFIC))
        .key("surface", SchemaKinds.words(Vocabulary.GROUND));
  }

  private static void measured(SchemaObject session) {
    session
        .key("distance", SchemaKinds.distance())
        .key("time", SchemaKinds.duration())
        .key("rpe", SchemaKinds.rating())
        .key("heart-rate", SchemaKinds.units(Units.HEART_RATE))
        .key("power", SchemaKinds.units(Units.POWER))
        .keys(List.of("held", "last-quarter"), SchemaKinds.pace());
  }

  private static ObjectNode then(String definition) {
    ObjectNode then = SchemaObject.reference(definition);
    ObjectNode holds = then.objectNode();
    holds.putObject("properties").set("then", then);
    return holds;
  }

  private static ObjectNode fuel() {
    return new SchemaObject(SENTENCES.within("fuel"))
        .key("carbohydrate", SchemaKinds.units(Units.CARBOHYDRATE_RATE))
        .key("fluid", SchemaKinds.units(Units.FLUID_RATE))
        .key("products", SchemaKinds.words(Vocabulary.PRODUCTS))
        .key("sources", SchemaKinds.list(SchemaKinds.words(Vocabulary.SOURCES)))
        .node();
  }
}
