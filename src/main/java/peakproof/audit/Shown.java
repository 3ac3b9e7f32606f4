package peakproof.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Finding.Value;
import peakproof.document.Sport;
import peakproof.fact.Settings;
import peakproof.fact.Words;
import peakproof.measure.Digits;

/**
 * How values look in a sentence, with their unit for machines. A field's unit is told by how its
 * name ends.
 */
public final class Shown {
  private static final String SHARE = "share";

  private static final Set<String> SHARES =
      Set.of("spike", "reduction", "fasterThanGoal", "shareOfLongest", "costLow", "costHigh");

  private Shown() {}

  /** A setting; {@code unit} is the card's word for a bare number. */
  public static Value setting(Settings.Value value, String unit) {
    double number = value.number();
    return switch (value.kind()) {
      case COUNT -> new Value(number, Words.number(number), unit);
      case SHARE -> share(number);
      case DURATION -> minutes(number);
      case DISTANCE ->
          new Value(number, Words.metres(number, number < 1000 ? Sport.SWIM : Sport.RUN), "m");
      case TEMPERATURE -> new Value(number, Words.number(number) + " °C", "°C");
      case CARBOHYDRATE -> carbohydrate(number);
      case FLUID -> fluid(number);
      case DAY -> new Value(number, "D-" + Words.number(number), "days before the race");
      case WINDOW -> {
        String days = "D-" + Words.number(number) + " to D-" + Words.number(value.until());
        yield new Value(null, days, "days before the race");
      }
    };
  }

  /** A field of a fact. */
  public static Value field(String name, @Nullable Object value) {
    if (value == null) {
      return word("unknown");
    }
    if (value instanceof LocalDate date) {
      return new Value(null, Words.weekday(date), "date");
    }
    if (value instanceof Boolean truth) {
      return word(truth ? "yes" : "no");
    }
    if (value instanceof Enum<?> constant) {
      return word(constant.name().toLowerCase(Locale.ROOT));
    }
    return value instanceof Number number ? number(name, number.doubleValue()) : word("" + value);
  }

  /** A share with the digits, two at most, that tell it from limits it would look like. */
  static Value apart(Value value, List<Value> limits) {
    Double share = value.number();
    if (share == null || !value.unit().equals(SHARE)) {
      return value;
    }
    List<Double> alike =
        limits.stream()
            .filter(limit -> limit.unit().equals(SHARE) && limit.text().equals(value.text()))
            .map(Value::number)
            .filter(Objects::nonNull)
            .toList();
    for (int digits = 1; digits <= 2 && !alike.isEmpty(); digits++) {
      String told = percent(share, digits);
      int precise = digits;
      if (alike.stream().noneMatch(limit -> percent(limit, precise).equals(told))) {
        return new Value(share, told, SHARE);
      }
    }
    return value;
  }

  private static String percent(double share, int digits) {
    return Digits.fixed(share * 100, digits) + "%";
  }

  /** A number with more digits than a sentence needs, to tell it from one that looks alike. */
  static String exact(String name, double number) {
    String unit = number(name, number).unit();
    return unit.equals(SHARE) ? percent(number, 2) : (Digits.fixed(number, 3) + " " + unit).strip();
  }

  private static Value number(String name, double number) {
    if (ends(name, "minutes")) {
      return minutes(number);
    }
    if (ends(name, "metres")) {
      return new Value(number, Words.number(number) + " m", "m");
    }
    if (ends(name, "km")) {
      return new Value(number, Words.number(number) + " km", "km");
    }
    if (ends(name, "share") || ends(name, "change") || SHARES.contains(name)) {
      return share(number);
    }
    if (ends(name, "pace")) {
      return new Value(number, Words.swimPace(number), "s/100m");
    }
    if (ends(name, "carbohydrate")) {
      return carbohydrate(number);
    }
    return ends(name, "fluid") ? fluid(number) : new Value(number, Words.number(number), "");
  }

  private static boolean ends(String name, String unit) {
    return name.toLowerCase(Locale.ROOT).endsWith(unit);
  }

  private static Value minutes(double number) {
    return new Value(number, Words.minutes(number), "min");
  }

  private static Value share(double number) {
    return new Value(number, Words.share(number), SHARE);
  }

  private static Value carbohydrate(double number) {
    return new Value(number, Words.number(number) + " g/h", "g/h");
  }

  private static Value fluid(double number) {
    return new Value(number, Words.number(number * 1000) + " ml/h", "l/h");
  }

  private static Value word(String text) {
    return new Value(null, text, "");
  }
}
