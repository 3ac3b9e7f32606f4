package peakproof.measure;

/**
 * Pace and speed; one conversion each, exact by the 1959 international agreement on yard and mile.
 * Distances in metres and times in seconds must be above zero.
 */
public final class Pace {
  /** Metres in a yard. */
  public static final double YARD = 0.9144;

  /** Metres in a mile. */
  public static final double MILE = 1609.344;

  /** Metres of a marathon. */
  public static final double MARATHON = 42_195;

  /** Kilometres an hour in a metre a second. */
  static final double KMH = 3.6;

  private Pace() {}

  /** Seconds per 100 m. */
  public static double per100m(double metres, double seconds) {
    return 100 * positive(seconds) / positive(metres);
  }

  /** Seconds per 100 yards. */
  public static double per100yd(double metres, double seconds) {
    return 100 * YARD * positive(seconds) / positive(metres);
  }

  /** Seconds per kilometre. */
  public static double perKm(double metres, double seconds) {
    return 1000 * positive(seconds) / positive(metres);
  }

  /** Seconds per mile. */
  public static double perMile(double metres, double seconds) {
    return MILE * positive(seconds) / positive(metres);
  }

  /** Metres a second. */
  public static double speed(double metres, double seconds) {
    return positive(metres) / positive(seconds);
  }

  /** Kilometres an hour. */
  public static double kmh(double metres, double seconds) {
    return KMH * speed(metres, seconds);
  }

  /** Seconds per metre, of a speed in kilometres an hour. */
  static double secondsPerMetre(double kmh) {
    return KMH / positive(kmh);
  }

  private static double positive(double amount) {
    if (!(amount > 0) || Double.isInfinite(amount)) {
      throw new IllegalArgumentException("a distance or time above zero was expected");
    }
    return amount;
  }
}
