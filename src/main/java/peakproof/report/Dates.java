package peakproof.report;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates in English forms, whatever the machine's locale. */
final class Dates {
  private static final DateTimeFormatter FULL = form("EEE d MMM uuuu");
  private static final DateTimeFormatter DAY = form("EEE d MMM");
  private static final DateTimeFormatter WEEK = form("d MMM");
  private static final DateTimeFormatter WEEK_WITH_YEAR = form("d MMM uuuu");

  private Dates() {}

  /** {@code Sun 4 Jul 2027}. */
  static String full(LocalDate date) {
    return FULL.format(date);
  }

  /** {@code Sun 4 Jul}, with its year when that is not the race's. */
  static String day(LocalDate date, LocalDate race) {
    return (sameYear(date, race) ? DAY : FULL).format(date);
  }

  /** {@code week of 14 Jun}, with its year when that is not the race's. */
  static String week(LocalDate start, LocalDate race) {
    return "week of " + (sameYear(start, race) ? WEEK : WEEK_WITH_YEAR).format(start);
  }

  private static boolean sameYear(LocalDate date, LocalDate race) {
    return date.getYear() == race.getYear();
  }

  private static DateTimeFormatter form(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
  }
}
