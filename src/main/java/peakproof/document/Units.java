package peakproof.document;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Numbers with one of a few units.
 *
 * @param kind what is measured, with its article
 * @param examples how it is written
 * @param lowest the least number allowed, in the first unit
 */
record Units(String kind, String examples, double lowest, List<Unit> units) {
  private static final Pattern SHAPE =
      Pattern.compile("([-+]?)(" + Numbers.NUMBER + ") *([^0-9 .,].*)?");

  private static final double ANY = Double.NEGATIVE_INFINITY;

  /** Above zero, however little. */
  private static final double SOME = Double.MIN_VALUE;

  private static final double POUND = 0.45359237;
  private static final double FOOT = 0.3048;
  private static final double MILE_PER_HOUR = 0.44704;

  /** The US fluid ounce in litres. */
  private static final double FLUID_OUNCE = 0.0295735295625;

  static final Units HEART_RATE = of("a heart rate", "131bpm", SOME, unit("bpm", 1));
  static final Units POWER = of("a power", "205W", SOME, unit("W", 1));
  static final Units MASS = of("a mass", "62kg or 137lb", SOME, unit("kg", 1), unit("lb", POUND));
  static final Units VOLUME =
      of(
          "a volume",
          "1.1l, 750ml or 24floz",
          0,
          unit("l", 1),
          unit("ml", 0.001),
          unit("floz", FLUID_OUNCE));
  static final Units FLUID_RATE =
      of(
          "a fluid rate",
          "650ml/h or 20floz/h",
          0,
          unit("ml/h", 0.001),
          unit("l/h", 1),
          unit("floz/h", FLUID_OUNCE));
  static final Units CARBOHYDRATE_RATE = of("a carbohydrate rate", "75g/h", 0, unit("g/h", 1));
  static final Units MILLIGRAMS = of("a dose", "180mg", 0, unit("mg", 1));
  static final Units TEMPERATURE =
      of("a temperature", "17.5C or 64F", ANY, unit("C", 1), new Unit("F", 5.0 / 9, -32));
  static final Units SPEED =
      of(
          "a speed",
          "4m/s, 14km/h or 10mph",
          0,
          unit("m/s", 1),
          unit("km/h", 1 / 3.6),
          unit("mph", MILE_PER_HOUR));
  static final Units LENGTH =
      of("a length", "1250m or 4100ft", 0, unit("m", 1), unit("ft", FOOT), unit("km", 1000));
  static final Units THICKNESS = of("a thickness", "5mm", SOME, unit("mm", 1));
  private static final Units SHARE = of("a share", "60%", 0, unit("%", 0.01));

  /** A unit: the value is (number + shift) × factor. */
  record Unit(String word, double factor, double shift) {}

  private static Unit unit(String word, double factor) {
    return new Unit(word, factor, 0);
  }

  private static Units of(String kind, String examples, double lowest, Unit... units) {
    return new Units(kind, examples, lowest, List.of(units));
  }

  static Quantity<Double> share(String text) {
    Quantity<Double> share = SHARE.read(text);
    return share instanceof Quantity.Of<Double> of && of.value() > 1
        ? SHARE.not(text, "write a share of up to 100%")
        : share;
  }

  Quantity<Double> read(String text) {
    Matcher shape = SHAPE.matcher(text);
    if (!shape.matches()) {
      return not(text, decimalComma(text));
    }
    double number = Double.parseDouble(shape.group(1) + shape.group(2));
    @Nullable String word = shape.group(3);
    if (word == null) {
      return new Quantity.NotThat<>(
          "'" + text + "' has no unit",
          "expected " + kind + " such as " + examples,
          "write " + text + units.get(0).word());
    }
    for (Unit unit : units) {
      if (unit.word().equals(word)) {
        return number < lowest
            ? not(
                text,
                lowest > 0
                    ? "write an amount above zero, or leave the line out"
                    : "write an amount from zero")
            : new Quantity.Of<>((number + unit.shift()) * unit.factor());
      }
    }
    return not(text, rightUnit(shape.group(1) + shape.group(2), word));
  }

  private String rightUnit(String number, String word) {
    String bare = word.replace("°", "").replace(" ", "").toLowerCase(Locale.ROOT);
    for (Unit unit : units) {
      if (unit.word().toLowerCase(Locale.ROOT).equals(bare)) {
        return "write " + number + unit.word();
      }
    }
    return "write it in " + Words.listed(units.stream().map(Unit::word).toList());
  }

  private String decimalComma(String text) {
    String dotted = text.replace(',', '.');
    return !dotted.equals(text) && SHAPE.matcher(dotted).matches()
        ? "write " + dotted
        : "write a number and its unit";
  }

  private Quantity<Double> not(String text, String instead) {
    return new Quantity.NotThat<>(
        "'" + text + "' is not " + kind, "expected " + kind + " such as " + examples, instead);
  }
}
