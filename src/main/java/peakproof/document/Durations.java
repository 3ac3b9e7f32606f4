package peakproof.document;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Durations in seconds. */
final class Durations {
  private static final String EXAMPLES = "expected a duration such as 45s, 12min, 1h30 or 1:10:00";
  private static final String CLOCK_EXAMPLES =
      "expected a time such as 45s, 12min, 6:28 or 1:41:30";

  private static final Pattern UNITS =
      Pattern.compile("(?:(N) ?h)? ?(?:(N) ?min)? ?(?:(N) ?s)?".replace("N", Numbers.NUMBER));
  private static final Pattern HOURS_AND_MINUTES = Pattern.compile("([0-9]{1,4})h([0-9]{2})");
  private static final Pattern HOURS_AND_DIGIT = Pattern.compile("([0-9]{1,4})h([0-9])");
  private static final Pattern CLOCK =
      Pattern.compile("(?:([0-9]{1,3}):)?([0-9]{1,3}):([0-9]{2}(?:\\.[0-9]{1,3})?)");
  private static final Pattern BARE = Pattern.compile(Numbers.NUMBER);
  private static final Pattern LOOSE =
      Pattern.compile(
          "(" + Numbers.NUMBER + ") ?(hours?|hrs?|H|mins?|minutes?|M|m|'|sec|secs|seconds?|\"|S)");

  private Durations() {}

  /**
   * Reads a duration above zero.
   *
   * @param minutesAndSeconds true where {@code m:ss} is one
   */
  static Quantity<Double> read(String text, boolean minutesAndSeconds) {
    Double seconds = seconds(text, minutesAndSeconds);
    if (seconds == null) {
      return not(text, minutesAndSeconds, advice(text, minutesAndSeconds));
    }
    return seconds > 0
        ? new Quantity.Of<>(seconds)
        : not(text, minutesAndSeconds, "write an amount above zero, or leave it out");
  }

  /** Reads a duration that may be none. */
  static Quantity<Double> span(String text) {
    return text.matches("0 ?(h|min|s)") ? new Quantity.Of<>(0.0) : read(text, false);
  }

  private static @Nullable Double seconds(String text, boolean minutesAndSeconds) {
    Matcher two = HOURS_AND_MINUTES.matcher(text);
    if (two.matches()) {
      return sum(two.group(1), two.group(2), null);
    }
    Matcher clock = CLOCK.matcher(text);
    if (clock.matches()) {
      boolean hours = clock.group(1) != null;
      return hours || minutesAndSeconds
          ? sum(clock.group(1), clock.group(2), clock.group(3))
          : null;
    }
    Matcher units = UNITS.matcher(text);
    boolean some = units.matches() && !text.isBlank() && !text.endsWith(" ");
    return some ? sum(units.group(1), units.group(2), units.group(3)) : null;
  }

  /** Null when minutes stand beside hours, or seconds beside minutes, and make a whole one. */
  private static @Nullable Double sum(
      @Nullable String hours, @Nullable String minutes, @Nullable String seconds) {
    double h = hours == null ? 0 : Double.parseDouble(hours);
    double min = minutes == null ? 0 : Double.parseDouble(minutes);
    double s = seconds == null ? 0 : Double.parseDouble(seconds);
    boolean over = (hours != null && min >= 60) || ((hours != null || minutes != null) && s >= 60);
    return over ? null : h * 3600 + min * 60 + s;
  }

  private static String advice(String text, boolean minutesAndSeconds) {
    Matcher clock = CLOCK.matcher(text);
    if (clock.matches() && clock.group(1) == null && !minutesAndSeconds) {
      boolean whole = clock.group(3).equals("00");
      String asHours = clock.group(2) + "h" + (whole ? "" : clock.group(3));
      String asMinutes = clock.group(2) + "min" + (whole ? "" : clock.group(3) + "s");
      return "write " + asHours + " or " + asMinutes;
    }
    Matcher digit = HOURS_AND_DIGIT.matcher(text);
    if (digit.matches()) {
      return "write "
          + digit.group(1)
          + "h0"
          + digit.group(2)
          + " or "
          + digit.group(1)
          + "h"
          + digit.group(2)
          + "0";
    }
    if (minutesAndSeconds && text.matches("[0-9]{1,3}\\.[0-5][0-9]")) {
      return "write " + text.replace('.', ':');
    }
    if (BARE.matcher(text).matches()) {
      return "write "
          + text
          + (minutesAndSeconds ? "s or " + text + "min" : "min or " + text + "h");
    }
    String meant = meant(text);
    if (meant != null) {
      return "write " + meant;
    }
    return "write hours, minutes and seconds as h, min and s";
  }

  /** The duration meant by loosely written units, {@code 60 minutes}; null when none is. */
  static @Nullable String meant(String text) {
    Matcher loose = LOOSE.matcher(text);
    if (!loose.matches()) {
      return null;
    }
    String unit = loose.group(2);
    boolean hour = unit.charAt(0) == 'h' || unit.charAt(0) == 'H';
    boolean minute = unit.charAt(0) == 'm' || unit.charAt(0) == 'M' || unit.equals("'");
    return loose.group(1) + (hour ? "h" : minute ? "min" : "s");
  }

  private static Quantity<Double> not(String text, boolean minutesAndSeconds, String instead) {
    return new Quantity.NotThat<>(
        "'"
            + text
            + "' is no duration"
            + (CLOCK.matcher(text).matches() && !minutesAndSeconds
                ? " here: hours or minutes?"
                : ""),
        minutesAndSeconds ? CLOCK_EXAMPLES : EXAMPLES,
        instead);
  }
}
