package peakproof.report;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.measure.Digits;
import peakproof.measure.Guide;
import peakproof.measure.Pace;

/** Amounts as an athlete reads them: {@code 4 h 30 min}, {@code 1:50 /100 m}, {@code 90 s}. */
final class Figures {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /** Up to here seconds are easier to count than minutes and seconds. */
  private static final long COUNTED_IN_SECONDS = 120;

  /** What is worked out for running is no more exact than this, in seconds per km. */
  private static final long STEP = 5;

  /** Half a second goes up, also where a conversion left it a hair below. */
  private static final double HAIR = 1e-9;

  private Figures() {}

  /** {@code 45 s}, {@code 90 s}, {@code 12 min}, {@code 4 h 30 min}. */
  static String time(double seconds) {
    long whole = Math.round(seconds);
    if (whole < COUNTED_IN_SECONDS && whole % 60 != 0) {
      return whole + " s";
    }
    List<String> pieces = new ArrayList<>();
    piece(pieces, whole / 3600, " h");
    piece(pieces, whole / 60 % 60, " min");
    piece(pieces, whole % 60, " s");
    return pieces.isEmpty() ? "0 s" : String.join(" ", pieces);
  }

  private static void piece(List<String> pieces, long amount, String unit) {
    if (amount > 0) {
      pieces.add(amount + unit);
    }
  }

  /** As {@link #time}, to the nearest five minutes from half an hour on. */
  static String roughTime(double seconds) {
    double step = seconds < 1800 ? 60 : 300;
    return time(Math.max(60, Math.round(seconds / step) * step));
  }

  /** {@code 3800 m} in the water, {@code 42.2 km} on land. */
  static String distance(double metres, Sport sport) {
    return sport == Sport.SWIM || metres < 1000
        ? Math.round(metres) + " m"
        : number(metres / 1000) + " km";
  }

  /** {@code 6:28}, {@code 1:10:00}. */
  static String clock(double seconds) {
    return Digits.clock(seconds + HAIR);
  }

  /** {@code 06:30}. */
  static String timeOfDay(LocalTime time) {
    return CLOCK.format(time);
  }

  /** In the unit of the sport: {@code 1:50 /100 m}, {@code 4:20 /km}, {@code 30 km/h}. */
  static String pace(double secondsPerMetre, Sport sport, boolean imperial) {
    return switch (sport) {
      case SWIM ->
          imperial
              ? clock(secondsPerMetre * 100 * Pace.YARD) + " /100 yd"
              : clock(secondsPerMetre * 100) + " /100 m";
      case RUN ->
          imperial
              ? clock(secondsPerMetre * Pace.MILE) + " /mi"
              : clock(secondsPerMetre * 1000) + " /km";
      case BIKE, STRENGTH, OTHER -> number(Pace.KMH / secondsPerMetre) + " km/h";
    };
  }

  /** What to hold, as the plan says it. */
  static String exactly(Guide guide, Sport sport, boolean imperial) {
    if (guide instanceof Guide.Pace pace) {
      return pace(pace.secondsPerMetre(), sport, imperial);
    }
    if (guide instanceof Guide.Power power) {
      return bound(power.bound()) + Math.round(power.watts()) + " W";
    }
    if (guide instanceof Guide.ShareOfCriticalPower share) {
      return percent(share.share()) + " of your critical power";
    }
    if (guide instanceof Guide.Rating rating) {
      return "effort " + number(rating.rating()) + " out of 10";
    }
    return heartRate((Guide.HeartRate) guide);
  }

  /** What to hold, worked out from tests: no more exact than those. */
  static String roughly(Guide guide, Sport sport, boolean imperial) {
    if (guide instanceof Guide.Pace pace) {
      double perMetre = pace.secondsPerMetre();
      double shown =
          sport == Sport.RUN ? Math.round(perMetre * 1000 / STEP) * STEP / 1000.0 : perMetre;
      return "about " + pace(shown, sport, imperial);
    }
    if (guide instanceof Guide.Power power && power.bound() == Guide.Bound.BELOW) {
      return "below " + Math.round(power.watts() / STEP) * STEP + " W";
    }
    return exactly(guide, sport, imperial);
  }

  private static String bound(Guide.Bound bound) {
    return switch (bound) {
      case AT -> "";
      case BELOW -> "below ";
      case UP_TO -> "up to ";
      case ABOVE -> "above ";
    };
  }

  private static String heartRate(Guide.HeartRate rate) {
    Double bpm = rate.bpm();
    Double share = rate.share();
    String of =
        share == null
            ? ""
            : percent(share)
                + (rate.ofReserve() ? " of your heart-rate reserve" : " of your maximum");
    if (bpm == null) {
      return of + (rate.ofReserve() ? "" : " heart rate");
    }
    return Math.round(bpm) + " bpm" + (of.isEmpty() ? "" : ", " + of);
  }

  static String percent(double share) {
    return number(100 * share) + " %";
  }

  /** {@code 650 ml}. */
  static String millilitres(double litres) {
    return Math.round(1000 * litres) + " ml";
  }

  /** At most one decimal. */
  static String number(double number) {
    return peakproof.fact.Words.number(number);
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String listed(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** The words with dots between them that are there. */
  static String dotted(@Nullable String... words) {
    List<String> there = new ArrayList<>();
    for (String word : words) {
      if (word != null && !word.isEmpty()) {
        there.add(word);
      }
    }
    return String.join(" · ", there);
  }
}
