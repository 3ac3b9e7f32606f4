package peakproof.document;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads an athlete's health entries and weighed sessions. */
final class HealthReader {
  private static final Words SPORT = Words.of("a sport of the race", "swim", "bike", "run");

  private final Desk desk;

  HealthReader(Desk desk) {
    this.desk = desk;
  }

  /** The entries under {@code health} of the athlete. */
  Athlete.Health read(Fields owner) {
    Fields fields = owner.mapping("health", "'health'");
    if (fields == null) {
      return new Athlete.Health(null, null, List.of(), Set.of(), null);
    }
    Athlete.Health health =
        new Athlete.Health(
            fields.read("checked", Quantity::date),
            fields.text("contact"),
            desk.each(fields.list("injuries"), this::injury),
            fields.words("conditions", Vocabulary.CONDITIONS),
            fields.read("cleared", Quantity::date));
    fields.finish();
    return health;
  }

  private Athlete.@Nullable Injury injury(Node node) {
    Fields fields = desk.fields(node, "an injury");
    if (fields == null) {
      return null;
    }
    var site = fields.require("site", "left achilles", Quantity.Of::new);
    var from = fields.read("from", Quantity::date);
    var to = fields.read("to", Quantity::date);
    fields.finish();
    if (from != null && to != null && to.isBefore(from)) {
      desk.fault(
          fields.keyPlace("to"),
          "this injury ends on " + to + ", before it begins",
          "expected 'to' on or after 'from'",
          "check the two dates");
    }
    return site == null ? null : new Athlete.Injury(fields.pointer(), site, from, to);
  }

  Athlete.@Nullable SweatRate sweatRate(Node node) {
    Fields fields = desk.fields(node, "a weighed session");
    if (fields == null) {
      return null;
    }
    var date = fields.read("date", Quantity::date);
    var sport = fields.read("sport", text -> SPORT.read(text).map(HealthReader::sport));
    var before = fields.require("before", "63.4kg", Quantity::mass);
    var after = fields.require("after", "62.1kg", Quantity::mass);
    var drunk = fields.require("drunk", "1.1l", Quantity::volume);
    var urine = fields.read("urine", Quantity::volume);
    var seconds = fields.require("duration", "2h", Quantity::duration);
    fields.finish();
    return before == null || after == null || drunk == null || seconds == null
        ? null
        : new Athlete.SweatRate(
            fields.pointer(), date, sport, before, after, drunk, urine, seconds);
  }

  private static Sport sport(String word) {
    return switch (word) {
      case "swim" -> Sport.SWIM;
      case "bike" -> Sport.BIKE;
      default -> Sport.RUN;
    };
  }
}
