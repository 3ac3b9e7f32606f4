package peakproof.measure;

import org.jspecify.annotations.Nullable;

/**
 * What a weighed session says of sweat. Mass lost by breath and burnt fuel, 0.1 to 0.2 kg/h over
 * long events, is in it, so that sweat is slightly over-read. A gain of mass is the red flag: drink
 * to thirst and never beyond losses (consensus on exercise-associated hyponatraemia 2015, Clin J
 * Sport Med 25:303).
 *
 * @param litresAnHour sweat rate
 * @param massLost share of the mass before, 0.02 for 2 %; negative for a gain
 * @param atMost true when what was passed as urine is not known, so that the rate may be less
 */
public record Sweat(Amount litresAnHour, Amount massLost, boolean atMost) {
  /** Milligrams of a millimole of sodium. */
  private static final double SODIUM = 22.99;

  /**
   * A weighed session.
   *
   * @param before kg
   * @param after kg
   * @param drunk litres
   * @param urine litres; null when unknown
   * @param hours of it
   */
  public record Weighing(
      double before, double after, double drunk, @Nullable Double urine, double hours) {}

  /** Sodium lost in an hour. */
  public record Sodium(Amount millimoles, Amount milligrams) {}

  /** Works a weighing out; unknown when it does not fit together. */
  public static Sweat of(Weighing weighing) {
    Double urine = weighing.urine;
    boolean atMost = urine == null;
    double passed = urine == null ? 0 : urine;
    boolean sound =
        Limit.positive(weighing.before)
            && Limit.positive(weighing.after)
            && Limit.countable(weighing.drunk)
            && Limit.countable(passed)
            && Limit.positive(weighing.hours);
    if (!sound) {
      Amount unknown = Amount.unknown("both weights, what was drunk, and how long it took");
      return new Sweat(unknown, unknown, atMost);
    }
    double lost = weighing.before - weighing.after;
    double sweat = lost + weighing.drunk - passed;
    return new Sweat(
        Limit.below(sweat, 0)
            ? Amount.unknown("weights and drinks that fit together")
            : Amount.of(Math.max(0, sweat) / weighing.hours),
        Amount.of(lost / weighing.before),
        atMost);
  }

  /** True when mass was gained: a caution, whatever else is known. */
  public boolean gained() {
    Double lost = massLost.value();
    return lost != null && Limit.below(lost, 0);
  }

  /**
   * Sodium lost at a sweat rate.
   *
   * @param litresAnHour from zero
   * @param concentration mmol/l, as measured: about 10 to 90, and not to be assumed
   */
  public static Sodium sodium(double litresAnHour, double concentration, Constants constants) {
    boolean sound =
        Limit.countable(litresAnHour)
            && Limit.within(concentration, 0, constants.of(Constant.SWEAT_SODIUM_MOST));
    if (!sound) {
      Amount unknown = Amount.unknown("a sweat rate and a measured sodium concentration");
      return new Sodium(unknown, unknown);
    }
    double millimoles = litresAnHour * concentration;
    return new Sodium(Amount.of(millimoles), Amount.of(millimoles * SODIUM));
  }

  /**
   * Litres an hour beyond which planned drinking is a caution: a measured sweat rate, else 1.0, or
   * 0.8 for someone small or long under way (common practice, no source).
   *
   * @param measured litres an hour; null when never measured
   */
  public static double drinkLimit(
      @Nullable Double measured, boolean smallOrSlow, Constants constants) {
    if (measured != null && Limit.countable(measured)) {
      return measured;
    }
    return constants.of(smallOrSlow ? Constant.DRINK_MOST_SMALL : Constant.DRINK_MOST);
  }
}
