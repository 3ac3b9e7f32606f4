package peakproof.rule;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import peakproof.document.Quantity;
import peakproof.fact.Settings;
import peakproof.fact.Settings.Kind;

/** Reads a setting's value; how it is spelled says what kind it is. */
final class SettingValue {
  private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{1,6})?");
  private static final Pattern SHARE = Pattern.compile("(-?\\d{1,6}(?:\\.\\d{1,6})?) ?%");
  private static final Pattern DAY = Pattern.compile("D-(\\d{1,3})");
  private static final Pattern WINDOW = Pattern.compile("D-(\\d{1,3}) ?\\.\\. ?D-(\\d{1,3})");
  private static final Pattern NO_TIME = Pattern.compile("0 ?(h|min|s)");
  private static final Pattern NO_DISTANCE = Pattern.compile("0 ?(km|m)");

  private SettingValue() {}

  /** The value, or null when the text is spelled like none. */
  static Settings.@Nullable Value of(String text) {
    String trimmed = text.strip();
    if (NUMBER.matcher(trimmed).matches()) {
      return one(Kind.COUNT, Double.parseDouble(trimmed));
    }
    Matcher share = SHARE.matcher(trimmed);
    if (share.matches()) {
      return one(Kind.SHARE, Double.parseDouble(share.group(1)) / 100);
    }
    Matcher day = DAY.matcher(trimmed);
    if (day.matches()) {
      return one(Kind.DAY, Integer.parseInt(day.group(1)));
    }
    Matcher window = WINDOW.matcher(trimmed);
    if (window.matches()) {
      int from = Integer.parseInt(window.group(1));
      int until = Integer.parseInt(window.group(2));
      return from < until ? null : new Settings.Value(Kind.WINDOW, from, until);
    }
    return quantity(trimmed);
  }

  private static Settings.@Nullable Value quantity(String text) {
    if (NO_TIME.matcher(text).matches()) {
      return one(Kind.DURATION, 0);
    }
    if (NO_DISTANCE.matcher(text).matches()) {
      return one(Kind.DISTANCE, 0);
    }
    Double seconds = Quantity.duration(text).orNull();
    if (seconds != null) {
      return one(Kind.DURATION, seconds / 60);
    }
    Double metres = Quantity.distance(text).orNull();
    if (metres != null) {
      return one(Kind.DISTANCE, metres);
    }
    Double celsius = Quantity.temperature(text).orNull();
    if (celsius != null) {
      return one(Kind.TEMPERATURE, celsius);
    }
    Double carbohydrate = Quantity.carbohydrateRate(text).orNull();
    if (carbohydrate != null) {
      return one(Kind.CARBOHYDRATE, carbohydrate);
    }
    Double fluid = Quantity.fluidRate(text).orNull();
    return fluid == null ? null : one(Kind.FLUID, fluid);
  }

  private static Settings.Value one(Kind kind, double number) {
    return new Settings.Value(kind, number, number);
  }

  /** True when a value lies in a setting's range, the ends included. */
  static boolean within(Settings.Value value, Settings.Value from, Settings.Value to) {
    double least =
        Math.min(Math.min(from.number(), from.until()), Math.min(to.number(), to.until()));
    double most =
        Math.max(Math.max(from.number(), from.until()), Math.max(to.number(), to.until()));
    return Math.min(value.number(), value.until()) >= least
        && Math.max(value.number(), value.until()) <= most;
  }
}
