package peakproof.document;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads a race. */
final class EventReader {
  private static final Event.Legs NO_LEGS = new Event.Legs(null, null, null);

  private final Desk desk;

  EventReader(Desk desk) {
    this.desk = desk;
  }

  /** The event; null when a required key is missing or wrong. */
  @Nullable Event read(Node node) {
    Fields fields = desk.fields(node, "the event");
    if (fields == null) {
      return null;
    }
    var name = fields.require("name", "Saltmarsh Long Course", Quantity.Of::new);
    var date = fields.require("date", "2027-07-04", Quantity::date);
    var start = fields.read("start", Quantity::time);
    fields.demand("legs", "{swim: 3.8km, bike: 180km, run: 42.2km}");
    Event.Legs legs = legs(fields);
    var distance = fields.read("distance", Vocabulary.DISTANCE::read);
    var minimumAge = fields.read("minimum-age", Quantity::count);
    Event.Swim swim = swim(fields);
    Event.Bike bike = bike(fields);
    Event.Run run = run(fields);
    Event.Weather weather = weather(fields);
    Event.CutOffs cutOffs = cutOffs(fields);
    Event.RuleBook ruleBook = ruleBook(fields);
    fields.finish();
    return name == null || date == null || legs == null
        ? null
        : new Event(
            "/event",
            name,
            date,
            start,
            legs,
            distance,
            minimumAge,
            swim,
            bike,
            run,
            weather,
            cutOffs,
            ruleBook);
  }

  /** Leg lengths under {@code legs}; null when the key is not written. */
  Event.@Nullable Legs legs(Fields owner) {
    Fields fields = owner.mapping("legs", "'legs'");
    if (fields == null) {
      return owner.has("legs") ? NO_LEGS : null;
    }
    Event.Legs legs =
        new Event.Legs(leg(fields, Sport.SWIM), leg(fields, Sport.BIKE), leg(fields, Sport.RUN));
    fields.finish();
    return legs;
  }

  private @Nullable Double leg(Fields fields, Sport sport) {
    return fields.read(
        sport.word(),
        text ->
            Quantity.distance(text) instanceof Quantity.Of<Double>
                ? Quantity.amount(text, sport, false)
                    .map(work -> ((SetLine.Distance) work).metres())
                : Quantity.distance(text));
  }

  private static Event.Swim swim(Fields owner) {
    Fields fields = owner.mapping("swim", "'swim' of the event");
    if (fields == null) {
      return new Event.Swim(null, null, null, null, null, null, Set.of());
    }
    Event.Swim swim =
        new Event.Swim(
            fields.read("water", Vocabulary.WATER::read),
            fields.read("temperature", Quantity::temperature),
            fields.read("direction", Vocabulary.DIRECTION::read),
            fields.read("wetsuit", Vocabulary.WETSUIT::read),
            fields.read("start", Vocabulary.START::read),
            fields.read("starters", Quantity::count),
            fields.words("conditions", Vocabulary.SWIM_CONDITIONS));
    fields.finish();
    return swim;
  }

  private static Event.Bike bike(Fields owner) {
    Fields fields = owner.mapping("bike", "'bike' of the event");
    if (fields == null) {
      return new Event.Bike(null, null, null, null, null);
    }
    Event.Bike bike =
        new Event.Bike(
            fields.read("climb", Quantity::length),
            fields.read("drafting", Quantity::flag),
            fields.read("draft-zone", Quantity::length),
            fields.read("aid-every", Quantity::distance),
            fields.read("course", Vocabulary.BIKE_COURSE::read));
    fields.finish();
    return bike;
  }

  private static Event.Run run(Fields owner) {
    Fields fields = owner.mapping("run", "'run' of the event");
    if (fields == null) {
      return new Event.Run(null, null, null, null);
    }
    Event.Run run =
        new Event.Run(
            fields.read("climb", Quantity::length),
            fields.read("descent", Quantity::length),
            fields.read("surface", Vocabulary.RUN_SURFACE::read),
            fields.read("aid-every", Quantity::distance));
    fields.finish();
    return run;
  }

  private static Event.Weather weather(Fields owner) {
    Fields fields = owner.mapping("weather", "'weather'");
    if (fields == null) {
      return new Event.Weather(null, null, null, null);
    }
    Event.Weather weather =
        new Event.Weather(
            fields.read("air", Quantity::temperature),
            fields.read("humidity", Quantity::share),
            fields.read("wind", Quantity::speed),
            fields.read("wbgt", Quantity::temperature));
    fields.finish();
    return weather;
  }

  private static Event.CutOffs cutOffs(Fields owner) {
    Fields fields = owner.mapping("cut-offs", "'cut-offs'");
    if (fields == null) {
      return new Event.CutOffs(null, null, null);
    }
    Event.CutOffs cutOffs =
        new Event.CutOffs(
            fields.read("swim", Quantity::duration),
            fields.read("bike", Quantity::duration),
            fields.read("finish", Quantity::duration));
    fields.finish();
    return cutOffs;
  }

  private Event.@Nullable RuleBook ruleBook(Fields owner) {
    Fields fields = owner.mapping("rule-book", "'rule-book'");
    if (fields == null) {
      return null;
    }
    var name = fields.require("name", "world-triathlon", Vocabulary.RULE_BOOK::read);
    Event.RuleBook book =
        new Event.RuleBook(
            name == null ? "" : name,
            fields.read("edition", Vocabulary.EDITION::read),
            fields.read("forbidden-above", Quantity::temperature),
            fields.read("required-below", Quantity::temperature));
    fields.finish();
    boolean bare = book.forbiddenAbove() == null && book.requiredBelow() == null;
    if ("own".equals(name)
        && bare
        && !fields.has("forbidden-above")
        && !fields.has("required-below")) {
      desk.fault(
          fields.place(),
          "an own rule book has no thresholds",
          "expected 'forbidden-above', 'required-below' or both",
          "write {name: own, forbidden-above: 24.6C, required-below: 15.9C}");
    }
    return name == null ? null : book;
  }
}
