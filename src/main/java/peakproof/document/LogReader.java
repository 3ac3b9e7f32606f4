package peakproof.document;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads a log. */
final class LogReader {
  private final Desk desk;
  private final SessionReader sessions;
  private final SymptomReader symptoms;

  LogReader(Desk desk) {
    this.desk = desk;
    this.sessions = new SessionReader(desk, true);
    this.symptoms = new SymptomReader(desk);
  }

  /** The log; null when it holds no keys. */
  @Nullable Log read(Node node) {
    Fields fields = desk.fields(node, "the log");
    if (fields == null) {
      return null;
    }
    Format.check(fields);
    var completeSince = fields.read("complete-since", Quantity::date);
    Map<LocalDate, String> weeks = weeks(fields);
    SortedMap<LocalDate, Log.Day> days = days(fields);
    fields.finish();
    return new Log(fields.pointer(), completeSince, weeks, days);
  }

  private Map<LocalDate, String> weeks(Fields owner) {
    Map<LocalDate, String> weeks = new LinkedHashMap<>();
    dated(
        owner.mapping("weeks", "'weeks' of the log"),
        WeekReader::monday,
        (date, node) -> {
          String focus = desk.value(node, Vocabulary.FOCUS::read);
          if (focus != null) {
            weeks.put(date, focus);
          }
        });
    return Collections.unmodifiableMap(weeks);
  }

  private SortedMap<LocalDate, Log.Day> days(Fields owner) {
    SortedMap<LocalDate, Log.Day> days = new TreeMap<>();
    dated(
        owner.mapping("days", "'days' of the log"),
        Quantity::date,
        (date, node) -> {
          Log.Day day = day(node);
          if (day != null) {
            days.put(date, day);
          }
        });
    return Collections.unmodifiableSortedMap(days);
  }

  private void dated(
      @Nullable Fields fields,
      Function<String, Quantity<LocalDate>> readKey,
      BiConsumer<LocalDate, Node> take) {
    if (fields == null) {
      return;
    }
    fields
        .all()
        .forEach(
            (key, node) -> {
              Quantity<LocalDate> date = readKey.apply(key);
              if (date instanceof Quantity.NotThat<LocalDate> not) {
                desk.faults().add(not.at(node.place()));
              } else if (!node.faulty()) {
                take.accept(((Quantity.Of<LocalDate>) date).value(), node);
              }
            });
  }

  private Log.@Nullable Day day(Node node) {
    if (node.tree() instanceof Tree.Scalar line) {
      return new DayLine(desk, node, line).read();
    }
    Fields fields = desk.fields(node, "a day of the log");
    if (fields == null) {
      return null;
    }
    List<Session> done = desk.each(fields.list("sessions"), sessions::read);
    boolean rest = fields.yes("rest");
    Log.Missed missed = missed(fields);
    Log.Morning morning = symptoms.morning(fields);
    List<Log.Pain> pain = desk.each(fields.list("pain"), symptoms::pain);
    Log.Ill ill = symptoms.ill(fields);
    Set<String> medicine = fields.words("medicine", Vocabulary.MEDICINE);
    fields.finish();
    if (rest && !done.isEmpty()) {
      desk.fault(
          fields.keyPlace("rest"),
          "this day is a rest day and has sessions",
          "expected one of the two",
          "leave 'rest' or 'sessions' out");
    }
    if (fields.empty()) {
      desk.fault(
          fields.place(),
          "this day says nothing",
          "expected sessions, rest, missed, morning, pain, ill or medicine",
          "write 'rest', or leave the day out when nothing is known");
    }
    return new Log.Day(fields.pointer(), done, rest, missed, morning, pain, ill, medicine);
  }

  private static Log.@Nullable Missed missed(Fields owner) {
    Fields fields = owner.mapping("missed", "'missed'");
    if (fields == null) {
      return null;
    }
    Log.Missed missed =
        new Log.Missed(
            fields.read("sessions", Quantity::count),
            fields.read("because", Vocabulary.MISSED::read));
    fields.finish();
    return missed;
  }
}
