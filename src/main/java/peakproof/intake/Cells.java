package peakproof.intake;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import peakproof.document.ColumnMapping;
import peakproof.document.Quantity;

/** Reads a table's cells as the mapping says they are written. */
final class Cells {
  private static final Pattern WHOLE =
      Pattern.compile(
          "(?<date>[0-9]{1,4}[-/. ]+[0-9]{1,2}[-/. ]+[0-9]{1,4})(?:[T ,]+(?<time>[0-9].*))?");
  private static final Pattern DATE =
      Pattern.compile("([0-9]{1,4})[-/. ]+([0-9]{1,2})[-/. ]+([0-9]{1,4})");
  private static final Pattern TIME =
      Pattern.compile(
          "(?<h>[0-9]{1,2})[:.](?<m>[0-9]{2})(?:[:.](?<s>[0-9]{2})(?:[.,][0-9]{1,9})?)?"
              + " ?(?<half>[AaPp]\\.?[Mm]\\.?)?(?<offset>Z|[+-][0-9]{2}:?[0-9]{2})?");
  private static final Pattern GROUPED_BY_COMMAS =
      Pattern.compile("[0-9]{1,3}(,[0-9]{3})+(\\.[0-9]+)?");
  private static final Pattern GROUPED_BY_POINTS =
      Pattern.compile("[0-9]{1,3}(\\.[0-9]{3})+(,[0-9]+)?");
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,7}(?:\\.[0-9]+)?");
  private static final Pattern CLOCK =
      Pattern.compile("(?:(?<h>[0-9]{1,3}):)?(?<m>[0-9]{1,3}):(?<s>[0-9]{2})(?:\\.[0-9]{1,9})?");

  private final ColumnMapping mapping;
  private final @Nullable ZoneId zone;

  /**
   * @param zone where an instant's local day is taken
   */
  Cells(ColumnMapping mapping, @Nullable ZoneId zone) {
    this.mapping = mapping;
    this.zone = zone;
  }

  /** A day, with the time of day when the cell has one. */
  record Moment(LocalDate date, @Nullable LocalTime time) {}

  /** A day, a day with a time, or an instant, which becomes the day where the athlete was. */
  Quantity<Moment> moment(String text) {
    Matcher whole = WHOLE.matcher(text);
    LocalDate date = whole.matches() ? date(whole.group("date")) : null;
    if (date == null) {
      return noDate(text);
    }
    String time = whole.group("time");
    if (time == null) {
      return new Quantity.Of<>(new Moment(date, null));
    }
    Matcher parts = TIME.matcher(time);
    LocalTime at = parts.matches() ? time(parts) : null;
    if (at == null) {
      return noDate(text);
    }
    String offset = parts.group("offset");
    if (offset == null) {
      return new Quantity.Of<>(new Moment(date, at));
    }
    return instant(text, date.atTime(at), offset);
  }

  private Quantity<Moment> instant(String text, LocalDateTime written, String offset) {
    try {
      OffsetDateTime instant = written.atOffset(ZoneOffset.of(offset));
      if (zone == null && offset.equals("Z")) {
        return new Quantity.NotThat<>(
            "'" + text + "' is a moment in UTC",
            "expected to know where the athlete was, for the local day",
            "write 'zone: Europe/Oslo' or the like into the mapping, or give --zone");
      }
      LocalDateTime local =
          zone == null ? written : instant.atZoneSameInstant(zone).toLocalDateTime();
      return new Quantity.Of<>(new Moment(local.toLocalDate(), local.toLocalTime()));
    } catch (DateTimeException impossible) {
      return noDate(text);
    }
  }

  private @Nullable LocalDate date(String text) {
    Matcher parts = DATE.matcher(text);
    if (!parts.matches()) {
      return null;
    }
    int first = Integer.parseInt(parts.group(1));
    int second = Integer.parseInt(parts.group(2));
    int third = Integer.parseInt(parts.group(3));
    try {
      LocalDate date =
          switch (mapping.dates()) {
            case YEAR_MONTH_DAY -> LocalDate.of(first, second, third);
            case DAY_MONTH_YEAR -> LocalDate.of(third, second, first);
            case MONTH_DAY_YEAR -> LocalDate.of(third, first, second);
          };
      return date.getYear() >= 1900 && date.getYear() < 2200 ? date : null;
    } catch (DateTimeException notInTheCalendar) {
      return null;
    }
  }

  private static @Nullable LocalTime time(Matcher parts) {
    int hour = Integer.parseInt(parts.group("h"));
    String half = parts.group("half");
    if (half != null) {
      boolean afternoon = half.toLowerCase(Locale.ROOT).startsWith("p");
      hour = hour < 1 || hour > 12 ? -1 : hour % 12 + (afternoon ? 12 : 0);
    }
    try {
      return LocalTime.of(hour, Integer.parseInt(parts.group("m")));
    } catch (DateTimeException impossible) {
      return null;
    }
  }

  private Quantity<Moment> noDate(String text) {
    return new Quantity.NotThat<>(
        "'" + text + "' is no date here",
        "expected "
            + mapping.dates().word()
            + " such as "
            + switch (mapping.dates()) {
              case YEAR_MONTH_DAY -> "2027-05-30";
              case DAY_MONTH_YEAR -> "30.05.2027";
              case MONTH_DAY_YEAR -> "05/30/2027";
            }
            + ", a time after it if there is one",
        "check the cell, or say another order in the mapping, such as 'dates: "
            + (mapping.dates() == ColumnMapping.DateOrder.DAY_MONTH_YEAR
                    ? ColumnMapping.DateOrder.MONTH_DAY_YEAR
                    : ColumnMapping.DateOrder.DAY_MONTH_YEAR)
                .word()
            + "'");
  }

  /** A time of day. */
  Quantity<LocalTime> timeOfDay(String text) {
    Matcher parts = TIME.matcher(text);
    LocalTime time = parts.matches() && parts.group("offset") == null ? time(parts) : null;
    return time == null
        ? new Quantity.NotThat<>(
            "'" + text + "' is no time of day",
            "expected a time such as 06:30",
            "write hours and minutes")
        : new Quantity.Of<>(time);
  }

  /** The number with a point for decimals, grouping taken out; the text itself when it is none. */
  String plain(String text) {
    if (mapping.decimalComma()) {
      String whole = GROUPED_BY_POINTS.matcher(text).matches() ? text.replace(".", "") : text;
      return whole.replace(',', '.');
    }
    return GROUPED_BY_COMMAS.matcher(text).matches() ? text.replace(",", "") : text;
  }

  /** The number; null when the text is none. */
  @Nullable Double number(String text) {
    String plain = plain(text);
    return NUMBER.matcher(plain).matches() ? Double.valueOf(plain) : null;
  }

  /** Seconds, by the unit of the column, or as a log writes them; 0 for none. */
  Quantity<Double> seconds(String text, @Nullable String unit) {
    String written = unit == null ? "" : unit;
    Double number = number(text);
    if (number != null && (number == 0 || written.matches("s|min|h"))) {
      return new Quantity.Of<>(
          number * (written.equals("h") ? 3600 : written.equals("min") ? 60 : 1));
    }
    Matcher clock = CLOCK.matcher(plain(text));
    if (clock.matches() && (clock.group("h") != null || written.contains(":"))) {
      return clock(text, clock, written);
    }
    Quantity<Double> own = Quantity.span(text);
    return own instanceof Quantity.NotThat<Double> not
        ? new Quantity.NotThat<>(
            not.what(),
            unit == null ? not.expected() : "expected a duration in " + unit,
            unit == null
                ? not.instead() + ", or state a 'unit' for the column in the mapping"
                : "check the cell, or the 'unit' of the column in the mapping")
        : own;
  }

  private static Quantity<Double> clock(String text, Matcher parts, String unit) {
    boolean whole = parts.group("h") != null;
    boolean hours = !whole && unit.equals("h:mm");
    if (!whole && unit.equals("h:mm:ss")) {
      return new Quantity.NotThat<>(
          "'" + text + "' has two parts",
          "expected h:mm:ss such as 0:49:12",
          "check the cell, or state 'unit: mm:ss' or 'unit: h:mm' in the mapping");
    }
    int h = whole ? Integer.parseInt(parts.group("h")) : 0;
    int first = Integer.parseInt(parts.group("m"));
    int second = Integer.parseInt(parts.group("s"));
    if (second >= 60 || (whole && first >= 60)) {
      return new Quantity.NotThat<>(
          "'" + text + "' is no duration",
          "expected minutes and seconds below 60",
          "check the cell");
    }
    return new Quantity.Of<>(
        hours ? first * 3600.0 + second * 60 : h * 3600.0 + first * 60 + second);
  }
}
