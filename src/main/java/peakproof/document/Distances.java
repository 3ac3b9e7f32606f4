package peakproof.document;

import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Distances in metres, and the amounts of work of a sport. */
final class Distances {
  private static final double MILE = 1609.344;
  private static final double YARD = 0.9144;
  private static final double MARATHON = 42_195;
  private static final double HALF_MARATHON = 21_097.5;

  /** Least distance that is surely no slip for minutes, off the swim. */
  private static final double LEAST_ON_LAND = 100;

  /** The race distances, also as they are rounded. */
  private static final Map<String, Double> RACES =
      Map.of(
          "marathon",
          MARATHON,
          "42.2km",
          MARATHON,
          "26.2mi",
          MARATHON,
          "half-marathon",
          HALF_MARATHON,
          "21.1km",
          HALF_MARATHON,
          "13.1mi",
          HALF_MARATHON);

  private static final Pattern SHAPE = Pattern.compile("(" + Numbers.NUMBER + ") ?(km|mi|m|yd)?");
  private static final Pattern LOOSE =
      Pattern.compile(
          "(" + Numbers.NUMBER + ") ?(kms?|k|kilomet(?:er|re)s?|miles?|met(?:er|re)s?|yds|yards?)");
  private static final Pattern TIME = Pattern.compile("[0-9.]+ ?(h|min|s).*|.*[0-9]:[0-9].*");

  private Distances() {}

  static Quantity<Double> read(String text) {
    Double race = RACES.get(text);
    if (race != null) {
      return new Quantity.Of<>(race);
    }
    Matcher shape = SHAPE.matcher(text);
    if (!shape.matches()) {
      return not(
          text,
          "write metres as m, kilometres as km"
              + (text.indexOf(',') > 0 ? ", and a point for decimals" : ""));
    }
    @Nullable String unit = shape.group(2);
    if (unit == null) {
      return not(text, "write " + (isLong(text) ? text + "m" : text + "km or " + text + "m"));
    }
    double metres = Double.parseDouble(shape.group(1)) * factor(unit);
    return metres > 0
        ? new Quantity.Of<>(metres)
        : not(text, "write an amount above zero, or leave it out");
  }

  /** True for a bare number that can hardly be kilometres or minutes. */
  private static boolean isLong(String number) {
    return Double.parseDouble(number) >= LEAST_ON_LAND;
  }

  private static double factor(String unit) {
    return switch (unit) {
      case "km" -> 1000;
      case "mi" -> MILE;
      case "yd" -> YARD;
      default -> 1;
    };
  }

  static Quantity<SetLine.Work> amount(String text, Sport sport, boolean repeated) {
    if (TIME.matcher(text).matches()) {
      return Durations.read(text, repeated).map(SetLine.Time::new);
    }
    Matcher shape = SHAPE.matcher(text);
    boolean bare = shape.matches() && shape.group(2) == null;
    if (!sport.racing()) {
      return timeOnly(text, sport, bare);
    }
    if (bare && sport == Sport.SWIM) {
      return read(text + "m").map(SetLine.Distance::new);
    }
    if (bare) {
      return new Quantity.NotThat<>(
          "'" + text + "' has no unit",
          "expected a distance or duration such as 5km or 40min",
          "write " + (isLong(text) ? text + "m" : text + "min or " + text + "km"));
    }
    return read(text) instanceof Quantity.Of<Double> metres
        ? onLand(text, sport, metres.value(), shape)
        : neither(text, sport);
  }

  private static Quantity<SetLine.Work> onLand(
      String text, Sport sport, double metres, Matcher shape) {
    if (sport == Sport.SWIM || metres >= LEAST_ON_LAND) {
      return new Quantity.Of<>(new SetLine.Distance(metres));
    }
    boolean minutes = Objects.equals(shape.group(2), "m");
    return new Quantity.NotThat<>(
        "'" + text + "' is very short for a " + (sport == Sport.BIKE ? "ride" : "run"),
        "expected 100m or more, or a duration",
        minutes ? "did you mean " + shape.group(1) + "min?" : "write a duration");
  }

  private static Quantity<SetLine.Work> timeOnly(String text, Sport sport, boolean bare) {
    return new Quantity.NotThat<>(
        "'" + text + "' is no duration",
        "expected a duration such as 15min",
        bare
            ? "write " + text + "min"
            : "write its minutes first, such as '"
                + sport.word()
                + ": 40min', and the rest in 'note'");
  }

  private static Quantity<SetLine.Work> neither(String text, Sport sport) {
    boolean number = !text.isEmpty() && Character.isDigit(text.charAt(0));
    String meant = meant(text);
    return new Quantity.NotThat<>(
        "'" + text + "' is neither distance nor duration",
        "expected an amount such as " + (sport == Sport.SWIM ? "400" : "5km") + " or 40min",
        meant != null
            ? "write " + meant
            : number
                ? "write m, km, mi or yd after a distance, h, min or s after a duration"
                : Nearest.advice(
                    text,
                    RACES.keySet().stream()
                        .filter(word -> word.endsWith("marathon"))
                        .sorted()
                        .toList(),
                    "begin the part with a number"));
  }

  /** The amount meant by loosely written units, {@code 3 miles}; null when none is. */
  private static @Nullable String meant(String text) {
    Matcher loose = LOOSE.matcher(text);
    if (!loose.matches()) {
      return Durations.meant(text);
    }
    String unit = loose.group(2);
    return loose.group(1)
        + switch (unit.charAt(0)) {
          case 'k' -> "km";
          case 'y' -> "yd";
          default -> unit.startsWith("mi") ? "mi" : "m";
        };
  }

  private static Quantity<Double> not(String text, String instead) {
    return new Quantity.NotThat<>(
        "'" + text + "' is no distance",
        "expected a distance such as 400m, 3.8km, 13.1mi or half-marathon",
        instead);
  }
}
