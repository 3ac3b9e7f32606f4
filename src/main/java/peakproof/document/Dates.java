package peakproof.document;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days and times of day. */
final class Dates {
  /** The words for Monday to Sunday, in order. */
  static final List<String> WEEKDAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

  private static final Pattern DATE =
      Pattern.compile("((?:19|20|21)[0-9]{2})-([0-9]{2})-([0-9]{2})");
  private static final Pattern TIME = Pattern.compile("([01][0-9]|2[0-3]):([0-5][0-9])");

  private Dates() {}

  static Quantity<LocalDate> date(String text) {
    Matcher date = DATE.matcher(text);
    if (!date.matches()) {
      return noDate(
          text,
          text.matches("[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}")
              ? "write two digits for month and day"
              : "write year-month-day");
    }
    try {
      return new Quantity.Of<>(
          LocalDate.of(
              Integer.parseInt(date.group(1)),
              Integer.parseInt(date.group(2)),
              Integer.parseInt(date.group(3))));
    } catch (DateTimeException e) {
      return noDate(text, "check month and day in the calendar");
    }
  }

  private static Quantity<LocalDate> noDate(String text, String instead) {
    return new Quantity.NotThat<>(
        "'" + text + "' is no date", "expected a date such as 2027-06-12", instead);
  }

  static Quantity<LocalTime> time(String text) {
    Matcher time = TIME.matcher(text);
    return time.matches()
        ? new Quantity.Of<>(
            LocalTime.of(Integer.parseInt(time.group(1)), Integer.parseInt(time.group(2))))
        : new Quantity.NotThat<>(
            "'" + text + "' is no time of day", "expected a time such as 06:30", timeAdvice(text));
  }

  private static String timeAdvice(String text) {
    String coloned =
        text.matches("[0-9]{4}") ? text.substring(0, 2) + ":" + text.substring(2) : "0" + text;
    return TIME.matcher(coloned).matches()
        ? "write " + coloned
        : "write hours and minutes, 00:00 to 23:59";
  }

  static Quantity<LocalDateTime> dateTime(String text) {
    String[] halves = text.split("T", 2);
    if (halves.length == 2
        && date(halves[0]) instanceof Quantity.Of<LocalDate> date
        && time(halves[1]) instanceof Quantity.Of<LocalTime> time) {
      return new Quantity.Of<>(date.value().atTime(time.value()));
    }
    return new Quantity.NotThat<>(
        "'" + text + "' is no date with a time",
        "expected one such as 2027-07-02T14:00",
        DATE.matcher(text).matches()
            ? "add the time: " + text + "T14:00"
            : "write year-month-day, T, hours:minutes");
  }

  static Quantity<DayOfWeek> weekday(String text) {
    int index = WEEKDAYS.indexOf(text);
    if (index >= 0) {
      return new Quantity.Of<>(DayOfWeek.of(index + 1));
    }
    String start = text.toLowerCase(Locale.ROOT);
    String full = start.length() > 3 ? start.substring(0, 3) : start;
    return new Quantity.NotThat<>(
        "'" + text + "' is no weekday",
        "expected mon, tue, wed, thu, fri, sat or sun",
        WEEKDAYS.contains(full)
            ? "write " + full
            : Nearest.advice(text, WEEKDAYS, "write one of these"));
  }
}
