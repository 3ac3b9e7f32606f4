package peakproof.fact;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import peakproof.document.Sport;
import peakproof.measure.Digits;

/** Quantities and dates the way a coach writes them. */
public final class Words {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter WEEKDAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

  static final String WEEK_OF = "the week of ";
  static final String NOT_WRITTEN = " is not written";

  private Words() {}

  /** Entries that are missing, in a row; weeks that are not written are told together. */
  public static String missing(List<String> entries) {
    List<String> weeks =
        entries.stream()
            .filter(entry -> entry.startsWith(WEEK_OF) && entry.endsWith(NOT_WRITTEN))
            .toList();
    if (weeks.size() < 2) {
      return String.join(", ", entries);
    }
    List<String> days =
        weeks.stream()
            .map(week -> week.substring(WEEK_OF.length(), week.length() - NOT_WRITTEN.length()))
            .toList();
    int last = days.size() - 1;
    String together =
        "the weeks of "
            + String.join(", ", days.subList(0, last))
            + " and "
            + days.get(last)
            + " are not written";
    Stream<String> others = entries.stream().filter(entry -> !weeks.contains(entry));
    return Stream.concat(Stream.of(together), others).collect(Collectors.joining(", "));
  }

  /** {@code 45min}, {@code 1h35}, {@code 30s}. */
  public static String minutes(double minutes) {
    long seconds = Math.round(Math.abs(minutes) * 60);
    String sign = minutes < 0 ? "-" : "";
    if (seconds == 0) {
      return "0min";
    }
    if (seconds < 60) {
      return sign + seconds + "s";
    }
    long whole = Math.round(seconds / 60.0);
    return sign
        + (whole < 60
            ? whole + "min"
            : whole / 60 + "h" + (whole % 60 == 0 ? "" : Digits.two(whole % 60)));
  }

  /** {@code 1:50/100m}. */
  public static String swimPace(double secondsPer100) {
    return Digits.clock(secondsPer100) + "/100m";
  }

  /** {@code 5:27/km}. */
  public static String runPace(double secondsPerKm) {
    return Digits.clock(secondsPerKm) + "/km";
  }

  /** {@code 400 m} in the water, {@code 16.6 km} elsewhere. */
  public static String metres(double metres, Sport sport) {
    return sport == Sport.SWIM ? number(metres) + " m" : number(metres / 1000) + " km";
  }

  /** {@code 33%}. */
  public static String share(double share) {
    return Math.round(share * 100) + "%";
  }

  /** At most one decimal: {@code 3}, {@code 2.5}. */
  public static String number(double number) {
    long tenths = Math.round(number * 10);
    return tenths % 10 == 0 ? String.valueOf(tenths / 10) : Digits.fixed(tenths / 10.0, 1);
  }

  /** {@code 14 Jun}. */
  public static String day(LocalDate date) {
    return DAY.format(date);
  }

  /** {@code Mon 14 Jun}. */
  public static String weekday(LocalDate date) {
    return WEEKDAY.format(date);
  }
}
