package peakproof.document;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Paces, and whatever else a set is held at. */
final class Targets {
  private static final double HUNDRED_YARDS = 91.44;
  private static final double MILE = 1609.344;

  private static final Pattern PACE =
      Pattern.compile("([0-9]{1,2}):([0-5][0-9](?:\\.[0-9]{1,2})?)/(100m|100yd|km|mi)");
  private static final Pattern SHARE = Pattern.compile("(" + Numbers.NUMBER + ") ?% ?([a-zA-Z]*)");
  private static final String EXAMPLES =
      "expected a pace, heart rate, power or rating: 1:50/100m, 4:55/km, 131bpm, 70%maxhr, 65%hrr, 205W, 85%cp or rpe6";

  private Targets() {}

  static Quantity<Double> pace(String text) {
    Matcher pace = PACE.matcher(text);
    if (!pace.matches()) {
      return new Quantity.NotThat<>(
          "'" + text + "' is no pace",
          "expected a pace such as 1:50/100m, 1:41/100yd, 4:55/km or 8:00/mi",
          text.matches("[0-9]{1,2}:[0-5][0-9]")
              ? "write " + text + "/100m or " + text + "/km"
              : "write minutes:seconds/distance");
    }
    double seconds = Integer.parseInt(pace.group(1)) * 60 + Double.parseDouble(pace.group(2));
    double metres =
        switch (pace.group(3)) {
          case "100m" -> 100;
          case "100yd" -> HUNDRED_YARDS;
          case "km" -> 1000;
          default -> MILE;
        };
    return seconds > 0
        ? new Quantity.Of<>(seconds / metres)
        : new Quantity.NotThat<>(
            "'" + text + "' is no pace", "expected a time above zero", "write it such as 4:55/km");
  }

  static Quantity<Target> read(String text) {
    if (text.contains("/") || text.contains(":")) {
      return pace(text).map(Target.Pace::new);
    }
    if (text.contains("%")) {
      return share(text);
    }
    if (text.startsWith("rpe")) {
      return Numbers.rating(text.substring(3), text).map(Target.Rating::new);
    }
    String unit = text.replaceFirst("^[0-9. ]*", "");
    if (unit.equalsIgnoreCase("bpm")) {
      return Units.HEART_RATE.read(text).map(Target.HeartRate::new);
    }
    if (unit.equalsIgnoreCase("w")) {
      return Units.POWER.read(text).map(Target.Power::new);
    }
    return new Quantity.NotThat<>("'" + text + "' is no target", EXAMPLES, advice(text, unit));
  }

  private static String advice(String text, String unit) {
    if (unit.matches("[-–][0-9].*")) {
      return "write one number, the middle of the range";
    }
    return unit.isEmpty() && !text.isEmpty()
        ? "write its unit: " + text + "bpm or " + text + "W"
        : "write one of these";
  }

  private static Quantity<Target> share(String text) {
    Matcher share = SHARE.matcher(text);
    String of = share.matches() ? share.group(2) : "";
    double value = share.matches() ? Double.parseDouble(share.group(1)) / 100 : 0;
    @Nullable Target target =
        switch (of) {
          case "maxhr" -> value <= 1 ? new Target.ShareOfMaximum(value) : null;
          case "hrr" -> value <= 1 ? new Target.ShareOfReserve(value) : null;
          case "cp" -> new Target.ShareOfCriticalPower(value);
          default -> null;
        };
    if (target != null && value > 0) {
      return new Quantity.Of<>(target);
    }
    return new Quantity.NotThat<>(
        "'" + text + "' is no target" + (of.isEmpty() ? ": a share of what?" : ""),
        "expected a share of the highest heart rate (70%maxhr), of the reserve (65%hrr) or of critical power (85%cp)",
        of.isEmpty() ? "write maxhr, hrr or cp after the '%'" : "write one of these");
  }
}
