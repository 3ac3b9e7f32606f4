package peakproof.document;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads an athlete's tests and recent races. */
final class TestReader {
  private static final List<Sport> SPORTS =
      Stream.of(Sport.values()).filter(Sport::racing).toList();
  private static final String EXAMPLES =
      "expected a distance with its time, or a duration with power or heart rate";

  private final Desk desk;

  TestReader(Desk desk) {
    this.desk = desk;
  }

  Athlete.@Nullable Test read(Node node) {
    Fields fields = desk.fields(node, "a test");
    if (fields == null) {
      return null;
    }
    var date = fields.require("date", "2027-05-08", Quantity::date);
    List<Sport> written = SPORTS.stream().filter(sport -> fields.has(sport.word())).toList();
    Sport sport = written.isEmpty() ? null : written.get(0);
    SetLine.Work work =
        sport == null
            ? null
            : fields.read(sport.word(), text -> Quantity.amount(text, sport, false));
    var seconds = fields.read("time", Quantity::clock);
    var power = fields.read("power", Quantity::power);
    var heartRate = fields.read("heart-rate", Quantity::heartRate);
    if (written.size() != 1 && !(written.isEmpty() && fields.strange())) {
      desk.fault(
          written.isEmpty() ? fields.place() : fields.keyPlace(written.get(1).word()),
          written.isEmpty() ? "this test does not say its sport" : "this test has two sports",
          "expected one of swim, bike or run",
          "write it such as {date: 2027-05-08, swim: 400m, time: 6:28}");
    }
    complain(fields, work);
    fields.finish();
    if (date == null || sport == null || work == null) {
      return null;
    }
    return new Athlete.Test(
        fields.pointer(),
        date,
        sport,
        work instanceof SetLine.Distance distance ? distance.metres() : null,
        work instanceof SetLine.Time time ? time.seconds() : null,
        seconds,
        power,
        heartRate);
  }

  private void complain(Fields fields, SetLine.@Nullable Work work) {
    boolean timed = fields.has("time");
    boolean measured = fields.has("power") || fields.has("heart-rate");
    if (fields.strange()) {
      return;
    }
    if (work instanceof SetLine.Distance && !timed) {
      desk.fault(
          fields.place(), "this test has a distance and no time", EXAMPLES, "add 'time: 6:28'");
    } else if (work instanceof SetLine.Time && timed) {
      desk.fault(
          fields.keyPlace("time"),
          "this test has its duration twice",
          EXAMPLES,
          "leave 'time' out, or write a distance instead of the duration");
    } else if (work instanceof SetLine.Time && !measured) {
      desk.fault(
          fields.place(),
          "this test has a duration and nothing measured",
          EXAMPLES,
          "add 'power: 231W' or 'heart-rate: 152bpm'");
    }
  }
}
