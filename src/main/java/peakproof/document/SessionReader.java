package peakproof.document;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads one session of a plan or a log, and what follows straight after it. */
final class SessionReader {
  private static final List<String> MEASURED =
      List.of("distance", "time", "rpe", "heart-rate", "power", "held", "last-quarter");

  /** The words of the day stand for hours in the middle of them (common practice, no source). */
  private static final Map<String, LocalTime> PARTS_OF_DAY =
      Map.of("am", LocalTime.of(8, 0), "noon", LocalTime.NOON, "pm", LocalTime.of(17, 0));

  private final Desk desk;
  private final boolean log;
  private final WorkReader work;
  private final EventReader events;

  SessionReader(Desk desk, boolean log) {
    this.desk = desk;
    this.log = log;
    this.work = new WorkReader(desk, log);
    this.events = new EventReader(desk);
  }

  /** The session; null when it does not say what it is. */
  @Nullable Session read(Node node) {
    return read(node, null);
  }

  /**
   * {@code run 40min easy} as it has to be written, or null when it does not begin with a sport.
   */
  static @Nullable String spelled(Tree tree) {
    if (!(tree instanceof Tree.Scalar scalar)) {
      return null;
    }
    String text = scalar.text().strip();
    return Stream.of(Sport.values())
        .map(Sport::word)
        .filter(sport -> text.startsWith(sport + " "))
        .map(sport -> sport + ": " + text.substring(sport.length()).strip())
        .findFirst()
        .orElse(null);
  }

  private @Nullable Session read(Node node, @Nullable Sport before) {
    if (node.tree() instanceof Tree.Scalar scalar && !node.faulty()) {
      String spelled = spelled(scalar);
      String below = before == null ? "" : " below 'then:', indented";
      desk.fault(
          scalar.place(),
          "'" + scalar.text().strip() + "' has no ': '",
          "expected a session such as 'run: 40min easy'",
          spelled == null
              ? "write the sport, ': ' and then the rest" + below
              : "write '" + spelled + "'" + below);
      return null;
    }
    Fields fields = desk.fields(node, before == null ? "a session" : "'then'");
    if (fields == null) {
      return null;
    }
    List<String> kinds =
        new ArrayList<>(Stream.of(Sport.values()).map(Sport::word).filter(fields::has).toList());
    if (before == null && fields.has("race")) {
      kinds.add("race");
    }
    Sport sport =
        Stream.of(Sport.values()).filter(s -> kinds.contains(s.word())).findFirst().orElse(null);
    if (kinds.size() == 1) {
      refuseForeign(fields, sport);
    }
    if (before != null) {
      fields.refuse(List.of("race"), "in a session of its own", "write it as one");
    }
    Session session = session(fields, sport);
    if (kinds.size() == 1) {
      follows(fields, sport, before);
    } else {
      tellKinds(fields, kinds);
    }
    fields.finish("write one of these; any other sport as 'other: 40min …'");
    return session;
  }

  /** Refuses what only another kind of session has. */
  private void refuseForeign(Fields fields, @Nullable Sport sport) {
    if (sport != Sport.STRENGTH) {
      fields.refuse(
          List.of("for", "load", "new"),
          "in a strength session",
          "leave it out, or say it in 'note'");
    }
    if (sport != null) {
      fields.refuse(List.of("effort", "legs"), "beside 'race'", "write the effort in the line");
    }
    if (sport != Sport.SWIM && sport != Sport.BIKE) {
      fields.refuse(List.of("then"), "after a swim or ride", "write it as a session of its own");
    }
    if (!log) {
      fields.refuse(
          MEASURED,
          "in a log",
          "write what was measured in the log, and a target in the line such as '@rpe6'");
    }
  }

  private Session session(Fields fields, @Nullable Sport sport) {
    WorkReader.Work done = sport == null ? null : work.read(fields, sport);
    Session.Recorded recorded = log ? recorded(fields, done) : Session.Recorded.NOTHING;
    SessionDetails details = new SessionDetails(desk, fields);
    Session.Scene scene = details.scene();
    Session.Wear wear = details.wear();
    Session.Fuel fuel = details.fuel();
    Session.Strength strength = details.strength();
    boolean fresh = fields.yes("new");
    String race = fields.text("race");
    String effort = fields.read("effort", Vocabulary.RACED::read);
    Event.Legs legs = events.legs(fields);
    LocalTime time = fields.read("at", SessionReader::timeOfDay);
    String said = time == null ? null : fields.text("at");
    String partOfDay = said != null && PARTS_OF_DAY.containsKey(said) ? said : null;
    boolean test = fields.yes("test");
    boolean optional = fields.yes("optional");
    String purpose = fields.read("purpose", Vocabulary.PURPOSE::read);
    String medicine = fields.read("medicine", Vocabulary.MEDICINE::read);
    String note = note(fields.text("note"), done == null ? null : done.words());
    Node then = fields.node("then");
    return new Session(
        fields.pointer(),
        sport,
        done == null ? null : done.set(),
        recorded,
        scene,
        wear,
        fuel,
        sport == Sport.STRENGTH ? strength : null,
        race,
        effort,
        legs,
        time,
        partOfDay,
        test,
        optional,
        fresh,
        purpose,
        medicine,
        note,
        then == null ? null : read(then, sport));
  }

  private void tellKinds(Fields fields, List<String> kinds) {
    if (kinds.size() > 1) {
      desk.fault(
          fields.keyPlace(kinds.get(1)),
          "'" + kinds.get(1) + "' is a second sport in one session",
          "expected one of swim, bike, run, strength, other or race",
          "write it as a session of its own, or under 'then:' when it follows straight after");
    } else if (!fields.strange()) {
      desk.fault(
          fields.place(),
          "this session does not say its sport",
          "expected swim, bike, run, strength, other, race or rest",
          "write it first, such as 'run: 40min easy'");
    }
  }

  private void follows(Fields fields, @Nullable Sport sport, @Nullable Sport before) {
    boolean fits =
        before == null
            || (before == Sport.SWIM && (sport == Sport.BIKE || sport == Sport.RUN))
            || (before == Sport.BIKE && sport == Sport.RUN);
    if (!fits) {
      desk.fault(
          fields.place(),
          "this cannot follow straight after a " + (before == Sport.SWIM ? "swim" : "ride"),
          "expected " + (before == Sport.SWIM ? "a ride or run" : "a run"),
          "write it as a session of its own");
    }
  }

  private Session.Recorded recorded(Fields fields, WorkReader.@Nullable Work done) {
    Double seconds = done == null ? null : done.seconds();
    Double metres = done == null ? null : done.metres();
    twice(fields, "time", seconds);
    twice(fields, "distance", metres);
    Double time = fields.read("time", Quantity::duration);
    Double distance = fields.read("distance", Quantity::distance);
    return new Session.Recorded(
        seconds == null ? time : seconds,
        metres == null ? distance : metres,
        fields.read("rpe", Quantity::rating),
        fields.read("heart-rate", Quantity::heartRate),
        fields.read("power", Quantity::power),
        fields.read("held", Quantity::pace),
        fields.read("last-quarter", Quantity::pace));
  }

  private void twice(Fields fields, String key, @Nullable Double already) {
    if (already != null && fields.has(key)) {
      desk.fault(
          fields.keyPlace(key),
          "the session says its " + (key.equals("time") ? "duration" : "distance") + " twice",
          "expected it once",
          "leave '" + key + "' out");
    }
  }

  private static Quantity<LocalTime> timeOfDay(String text) {
    LocalTime middle = PARTS_OF_DAY.get(text);
    if (middle != null) {
      return new Quantity.Of<>(middle);
    }
    return Quantity.time(text) instanceof Quantity.NotThat<LocalTime> not
        ? new Quantity.NotThat<>(
            not.what(), "expected am, noon, pm or a time such as 06:30", not.instead())
        : Quantity.time(text);
  }

  private static @Nullable String note(@Nullable String note, @Nullable String words) {
    return note == null ? words : words == null ? note : words + "; " + note;
  }
}
