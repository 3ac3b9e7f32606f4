package peakproof.measure;

import java.util.List;

/**
 * Carbohydrate during exercise and before it. Targets by duration: Jeukendrup 2014, doi
 * 10.1007/s40279-014-0148-z, whatever the body's mass; more than 90 g/h only with a practised gut
 * and specialist help, and diabetes or gut disease is a clinician's matter. Loading and the meal
 * before: Thomas, Erdman and Burke 2016, from memory. Caffeine: Goldstein 2010; practised only.
 */
public final class Carbohydrate {
  private Carbohydrate() {}

  /**
   * Some time at one rate.
   *
   * @param rate g/h
   * @param hours moving
   */
  public record Stretch(double rate, double hours) {}

  /** Grams of all stretches together. */
  public static Amount grams(List<Stretch> stretches) {
    double grams = 0;
    for (Stretch stretch : stretches) {
      if (!Limit.countable(stretch.rate) || !Limit.countable(stretch.hours)) {
        return Amount.unknown("the rate and hours of every stretch");
      }
      grams += stretch.rate * stretch.hours;
    }
    return Amount.of(grams);
  }

  /** Mean rate of all stretches, g/h; unknown of no time. */
  public static Amount rate(List<Stretch> stretches) {
    Double grams = grams(stretches).value();
    double hours = stretches.stream().mapToDouble(Stretch::hours).sum();
    return grams == null || !Limit.positive(hours)
        ? Amount.unknown("the rate and hours of every stretch")
        : Amount.of(grams / hours);
  }

  /** The rate, g/h, that suits so many hours: none for 45 min, up to 90 g/h from 2.5 h on. */
  public static Band target(double hours, Constants constants) {
    if (!Limit.countable(hours)) {
      return Band.unknown("how long it takes");
    }
    double minutes = hours * 60;
    if (!Limit.above(minutes, constants.of(Constant.CARBOHYDRATE_NONE_TO))) {
      return Band.of(0, 0);
    }
    double some = constants.of(Constant.CARBOHYDRATE_SOME);
    if (Limit.below(minutes, constants.of(Constant.CARBOHYDRATE_SOME_FROM))) {
      return Band.of(0, some);
    }
    return Limit.below(minutes, constants.of(Constant.CARBOHYDRATE_MUCH_FROM))
        ? Band.of(some, constants.of(Constant.CARBOHYDRATE_SINGLE))
        : Band.of(some, constants.of(Constant.CARBOHYDRATE_MOST));
  }

  /** True when a rate, g/h, is past what one source of sugar alone is taken up at. */
  public static boolean needsSecondSource(double rate, Constants constants) {
    return Limit.above(rate, constants.of(Constant.CARBOHYDRATE_SINGLE));
  }

  /** Grams a day over the last 36 to 48 h before more than 90 min, for a body mass in kg. */
  public static Band loading(double mass, Constants constants) {
    return perKilogram(
        mass, Constant.CARBOHYDRATE_LOADING_FROM, Constant.CARBOHYDRATE_LOADING_TO, constants);
  }

  /** Grams in the one to four hours before, for a body mass in kg. */
  public static Band mealBefore(double mass, Constants constants) {
    return perKilogram(
        mass, Constant.CARBOHYDRATE_MEAL_FROM, Constant.CARBOHYDRATE_MEAL_TO, constants);
  }

  /** Milligrams of caffeine in total that were studied, for a body mass in kg. */
  public static Band caffeine(double mass, Constants constants) {
    return perKilogram(mass, Constant.CAFFEINE_FROM, Constant.CAFFEINE_TO, constants);
  }

  private static Band perKilogram(double mass, Constant from, Constant to, Constants constants) {
    return Limit.positive(mass)
        ? Band.of(mass * constants.of(from), mass * constants.of(to))
        : Band.unknown("the athlete's `mass`");
  }
}
