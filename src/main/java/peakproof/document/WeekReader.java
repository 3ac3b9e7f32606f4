package peakproof.document;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads one written week, as far as it can be without the others. */
final class WeekReader {
  private final Desk desk;
  private final SessionReader sessions;

  WeekReader(Desk desk) {
    this.desk = desk;
    this.sessions = new SessionReader(desk, false);
  }

  /**
   * A week as written.
   *
   * @param week with the days it lists itself
   * @param like the week whose days it takes over, or null
   */
  record Written(PlanWeek week, @Nullable LocalDate like, Place startsAt, Place likeAt) {}

  @Nullable Written read(Node node) {
    Fields fields = desk.fields(node, "a week");
    if (fields == null) {
      return null;
    }
    LocalDate starts = fields.require("starts", "2027-05-31", WeekReader::monday);
    LocalDate like = fields.read("like", Quantity::date);
    var focus = fields.read("focus", Vocabulary.FOCUS::read);
    var hours = fields.read("hours", Quantity::duration);
    var note = fields.text("note");
    Map<String, String> without = without(fields);
    var away = fields.read("away", Vocabulary.AWAY::read);
    Map<DayOfWeek, PlanDay> days = days(fields, like(fields));
    fields.finish();
    return starts == null
        ? null
        : new Written(
            new PlanWeek(fields.pointer(), starts, focus, hours, note, without, away, days),
            like,
            fields.keyPlace("starts"),
            fields.keyPlace("like"));
  }

  /** A week's Monday. */
  static Quantity<LocalDate> monday(String text) {
    Quantity<LocalDate> date = Quantity.date(text);
    if (!(date instanceof Quantity.Of<LocalDate> of)
        || of.value().getDayOfWeek() == DayOfWeek.MONDAY) {
      return date;
    }
    DayOfWeek day = of.value().getDayOfWeek();
    return new Quantity.NotThat<>(
        "'" + text + "' is a " + day.getDisplayName(TextStyle.FULL, Locale.ENGLISH),
        "expected the Monday of a week",
        "write " + of.value().minusDays(day.getValue() - 1L));
  }

  private boolean like(Fields fields) {
    boolean like = fields.has("like");
    if (like && fields.has("days")) {
      desk.fault(
          fields.keyPlace("days"),
          "this week has both 'like' and 'days'",
          "expected 'like' with 'but' for the days that differ",
          "write 'but:' instead of 'days:'");
    } else if (!like && fields.has("but")) {
      desk.fault(
          fields.keyPlace("but"),
          "this week has 'but' and no 'like'",
          "expected 'but' beside 'like: DATE' only",
          "write 'days:' instead of 'but:'");
    }
    return like;
  }

  private Map<String, String> without(Fields owner) {
    Fields fields = owner.mapping("without", "'without'");
    if (fields == null) {
      return Map.of();
    }
    Map<String, String> without = new LinkedHashMap<>();
    for (String sport : Vocabulary.WITHOUT.all()) {
      String reason = fields.text(sport);
      if (reason != null) {
        without.put(sport, reason);
      }
    }
    fields.finish();
    return Collections.unmodifiableMap(without);
  }

  private Map<DayOfWeek, PlanDay> days(Fields owner, boolean like) {
    Map<DayOfWeek, PlanDay> days = new EnumMap<>(DayOfWeek.class);
    for (String key : List.of("days", "but")) {
      Fields fields = owner.mapping(key, "'" + key + "'");
      if (fields == null) {
        continue;
      }
      for (DayOfWeek day : DayOfWeek.values()) {
        Node node = fields.node(Dates.WEEKDAYS.get(day.getValue() - 1));
        PlanDay read = node == null ? null : day(node);
        if (read != null && like == key.equals("but")) {
          days.put(day, read);
        }
      }
      fields.finish();
    }
    return Collections.unmodifiableMap(days);
  }

  private @Nullable PlanDay day(Node node) {
    if (isRest(node)) {
      return new PlanDay(node.pointer(), true, List.of(), List.of());
    }
    if (!(node.tree() instanceof Tree.Sequence sequence)) {
      String spelled = SessionReader.spelled(node.tree());
      desk.fault(
          node.place(),
          "a day is a list of sessions",
          "expected lines that begin with '- ', or the word rest",
          spelled == null
              ? "write '- ' before each session"
              : "write '- " + spelled + "' on a line below, indented");
      return null;
    }
    boolean rest = false;
    List<String> warnings = new ArrayList<>();
    List<Session> day = new ArrayList<>();
    for (Node item : node.items(sequence)) {
      if (isRest(item)) {
        rest = true;
      } else if (holds(item, "rest")) {
        rest |= restLine(item);
      } else if (holds(item, "warning")) {
        warningLine(item, warnings);
      } else {
        Session session = item.faulty() ? null : sessions.read(item);
        if (session != null) {
          day.add(session);
        }
      }
    }
    return new PlanDay(node.pointer(), rest, List.copyOf(warnings), List.copyOf(day));
  }

  private static boolean isRest(Node node) {
    return node.tree() instanceof Tree.Scalar scalar && scalar.text().strip().equals("rest");
  }

  private static boolean holds(Node node, String key) {
    return node.tree() instanceof Tree.Mapping mapping && mapping.entries().containsKey(key);
  }

  private boolean restLine(Node item) {
    Fields fields = desk.fields(item, "a rest line");
    if (fields == null) {
      return false;
    }
    boolean rest = fields.yes("rest");
    fields.text("note");
    fields.finish();
    return rest;
  }

  private void warningLine(Node item, List<String> warnings) {
    Fields fields = desk.fields(item, "a warning line");
    if (fields != null) {
      String warning = fields.read("warning", Vocabulary.WARNING::read);
      if (warning != null) {
        warnings.add(warning);
      }
      fields.finish();
    }
  }
}
