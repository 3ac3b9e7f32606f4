package peakproof.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Stream;

/** What stands under {@code athlete}, as {@link AthleteReader} reads it. */
final class AthleteSchema {
  private static final FormatSentences SENTENCES = FormatSentences.under("### The athlete");
  private static final List<String> RACED = List.of("swim", "bike", "run");

  private AthleteSchema() {}

  static ObjectNode athlete() {
    SchemaObject athlete = new SchemaObject(SENTENCES);
    SchemaObject experience =
        new SchemaObject(athlete.within("experience"))
            .key("years", SchemaKinds.number())
            .keys(Vocabulary.DISTANCE.all(), SchemaKinds.count());
    SchemaObject heartRate =
        new SchemaObject(athlete.within("heart-rate"))
            .keys(List.of("max", "resting"), SchemaKinds.units(Units.HEART_RATE));
    SchemaObject swim =
        new SchemaObject(athlete.within("swim"))
            .key("breathes", SchemaKinds.words(Vocabulary.BREATHES));
    SchemaObject bike =
        new SchemaObject(athlete.within("bike"))
            .key("critical-power", SchemaKinds.units(Units.POWER))
            .key("position", SchemaKinds.words(Vocabulary.POSITION));
    SchemaObject available =
        new SchemaObject(athlete.within("available"))
            .key("hours", SchemaKinds.duration())
            .key("days-off", SchemaKinds.list(SchemaKinds.words(Dates.WEEKDAYS)))
            .key("weekday", SchemaKinds.duration());
    SchemaObject lately =
        new SchemaObject(athlete.within("lately"))
            .keys(List.of("hours", "longest-ride", "longest-run"), SchemaKinds.duration())
            .key("longest-swim", SchemaKinds.distance())
            .key("open-water", SchemaKinds.date());
    SchemaObject para =
        new SchemaObject(athlete.within("para"))
            .key("class", SchemaKinds.text())
            .key("device", SchemaKinds.words(Vocabulary.DEVICE))
            .key("guide", SchemaKinds.flag());
    return athlete
        .key("name", SchemaKinds.text("Tove Lindqvist"))
        .key("born", SchemaKinds.born())
        .key("sex", SchemaKinds.words(Vocabulary.SEX))
        .key("category", SchemaKinds.words(Vocabulary.CATEGORY))
        .key("mass", SchemaKinds.units(Units.MASS))
        .key("experience", experience.node())
        .key("heart-rate", heartRate.node())
        .key("swim", swim.node())
        .key("bike", bike.node())
        .key("tests", SchemaKinds.list(test(athlete.within("tests"))))
        .key("available", available.node())
        .key("lately", lately.node())
        .key("health", health(athlete.within("health")))
        .key("sweat-rates", SchemaKinds.list(sweatRate(athlete.within("sweat-rates"))))
        .key("para", para.node())
        .required("name")
        .node();
  }

  private static ObjectNode test(FormatSentences sentences) {
    SchemaObject test =
        new SchemaObject(sentences)
            .key("date", SchemaKinds.date())
            .key("time", SchemaKinds.clock())
            .key("power", SchemaKinds.units(Units.POWER))
            .key("heart-rate", SchemaKinds.units(Units.HEART_RATE))
            .required("date")
            .oneOf(RACED);
    for (String word : RACED) {
      Sport sport = Stream.of(Sport.values()).filter(s -> s.word().equals(word)).findAny().get();
      test.key(word, SchemaKinds.amount(sport));
      ObjectNode timed = SchemaObject.having(word);
      timed.withObject("/properties").set(word, SchemaKinds.isDuration());
      ObjectNode measured = timed.objectNode();
      measured.set("not", SchemaObject.having("time"));
      measured
          .putArray("anyOf")
          .add(SchemaObject.having("power"))
          .add(SchemaObject.having("heart-rate"));
      ObjectNode swum = SchemaObject.having(word);
      ObjectNode notTimed = timed.objectNode();
      notTimed.set("not", SchemaKinds.isDuration());
      swum.withObject("/properties").set(word, notTimed);
      test.when(timed, measured).when(swum, SchemaObject.having("time"));
    }
    return test.node();
  }

  private static ObjectNode health(FormatSentences sentences) {
    SchemaObject injury =
        new SchemaObject(sentences.within("injuries"))
            .key("site", SchemaKinds.text("left achilles"))
            .keys(List.of("from", "to"), SchemaKinds.date())
            .required("site");
    return new SchemaObject(sentences)
        .key("checked", SchemaKinds.date())
        .key("contact", SchemaKinds.text("on file"))
        .key("injuries", SchemaKinds.list(injury.node()))
        .key("conditions", SchemaKinds.list(SchemaKinds.words(Vocabulary.CONDITIONS)))
        .key("cleared", SchemaKinds.date())
        .node();
  }

  private static ObjectNode sweatRate(FormatSentences sentences) {
    return new SchemaObject(sentences)
        .key("date", SchemaKinds.date())
        .key("sport", SchemaKinds.words(RACED))
        .keys(List.of("before", "after"), SchemaKinds.units(Units.MASS))
        .keys(List.of("drunk", "urine"), SchemaKinds.units(Units.VOLUME))
        .key("duration", SchemaKinds.duration())
        .required("before", "after", "drunk", "duration")
        .node();
  }
}
