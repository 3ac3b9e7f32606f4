package peakproof.measure;

/**
 * Pace and speed; one conversion each, exact by the 1959 international agreement on yard and mile.
 * Distances in metres and times in seconds must be above zero; of any other all are unknown.
 */
public final class Pace {
  /** Metres in a yard. */
  public static final double YARD = 0.9144;

  /** Metres in a mile. */
  public static final double MILE = 1609.344;

  /** Metres of a marathon. */
  public static final double MARATHON = 42_195;

  /** Kilometres an hour in a metre a second. */
  public static final double KMH = 3.6;

  private Pace() {}

  /** Seconds per 100 m. */
  public static Amount per100m(double metres, double seconds) {
    return scaled(100, seconds, metres);
  }

  /** Seconds per 100 yards. */
  public static Amount per100yd(double metres, double seconds) {
    return scaled(100 * YARD, seconds, metres);
  }

  /** Seconds per kilometre. */
  public static Amount perKm(double metres, double seconds) {
    return scaled(1000, seconds, metres);
  }

  /** Seconds per mile. */
  public static Amount perMile(double metres, double seconds) {
    return scaled(MILE, seconds, metres);
  }

  /** Metres a second. */
  public static Amount speed(double metres, double seconds) {
    return scaled(1, metres, seconds);
  }

  /** Kilometres an hour. */
  public static Amount kmh(double metres, double seconds) {
    return scaled(KMH, metres, seconds);
  }

  /** Seconds per metre, of a speed in kilometres an hour. */
  static Amount secondsPerMetre(double kmh) {
    return scaled(KMH, 1, kmh);
  }

  private static Amount scaled(double factor, double amount, double over) {
    return Limit.positive(amount) && Limit.positive(over)
        ? Amount.of(factor * amount / over)
        : Amount.unknown("a distance and a time above zero");
  }
}
