package peakproof.measure;

/**
 * Wet-bulb globe temperature, °C. Bands of the American College of Sports Medicine 2007, table 3 of
 * PMC5094838; modelling puts a protective limit for triathlon at 23 to 26 (2023, doi
 * 10.1080/23328940.2023.2210477), hence cautions well below the formal limit.
 */
public final class Wbgt {
  private static final double COLDEST = -60;
  private static final double HOTTEST = 70;

  private Wbgt() {}

  /** How loudly to warn; the thresholds are common practice, no source. */
  public enum Caution {
    NONE,
    NOTE,
    CAUTION,
    STRONG
  }

  /** The bands of the published table. */
  public enum Heat {
    /** Below 27.9. */
    LOW,
    /** 27.9 to 30.0. */
    MODERATE,
    /** Up to 32.2: who is not used to heat should stop. */
    HIGH,
    /** Above 32.2: cancel for all. */
    EXTREME
  }

  /**
   * Outdoors by ISO 7243: 0.7, 0.2 and 0.1 of the three temperatures, each in °C, −60 to 70.
   *
   * @param naturalWet of a wetted bulb in wind and sun
   * @param globe of the black globe
   * @param air in the shade
   */
  public static Amount measured(double naturalWet, double globe, double air, Constants constants) {
    return possible(naturalWet) && possible(globe) && possible(air)
        ? Amount.of(
            constants.of(Constant.WBGT_WET) * naturalWet
                + constants.of(Constant.WBGT_GLOBE) * globe
                + constants.of(Constant.WBGT_AIR) * air)
        : Amount.unknown("three temperatures");
  }

  /**
   * The bureau of meteorology's approximation from air temperature and humidity. It takes strong
   * sun and light wind for granted, over-reads otherwise, and variants differ by 2 to 3 °C.
   *
   * @param air °C, −60 to 70
   * @param humidity share of saturation, 0 to 1
   */
  public static Amount estimated(double air, double humidity, Constants constants) {
    Double pressure = vapourPressure(air, humidity).value();
    return pressure == null
        ? Amount.unknown("air temperature and humidity")
        : Amount.of(
            constants.of(Constant.WBGT_ESTIMATE_AIR) * air
                + constants.of(Constant.WBGT_ESTIMATE_VAPOUR) * pressure
                + constants.of(Constant.WBGT_ESTIMATE_BASE));
  }

  /** Water vapour pressure in hPa, not kPa; air in °C, humidity as a share of saturation. */
  public static Amount vapourPressure(double air, double humidity) {
    return possible(air) && Limit.within(humidity, 0, 1)
        ? Amount.of(humidity * 6.105 * Math.exp(17.27 * air / (237.7 + air)))
        : Amount.unknown("air temperature and humidity");
  }

  /** The band of a temperature that is a number. */
  public static Heat heat(double wbgt, Constants constants) {
    if (Limit.above(wbgt, constants.of(Constant.WBGT_HIGH_TO))) {
      return Heat.EXTREME;
    }
    if (Limit.above(wbgt, constants.of(Constant.WBGT_MODERATE_TO))) {
      return Heat.HIGH;
    }
    return Limit.below(wbgt, constants.of(Constant.WBGT_MODERATE_FROM)) || Double.isNaN(wbgt)
        ? Heat.LOW
        : Heat.MODERATE;
  }

  /** How loudly to warn; an estimate must be 3 °C higher for the same. */
  public static Caution caution(double wbgt, boolean estimated, Constants constants) {
    double held = wbgt - (estimated ? constants.of(Constant.WBGT_ESTIMATE_HIGHER) : 0);
    if (reached(held, Constant.WBGT_STRONG, constants)) {
      return Caution.STRONG;
    }
    if (reached(held, Constant.WBGT_CAUTION, constants)) {
      return Caution.CAUTION;
    }
    return reached(held, Constant.WBGT_NOTE, constants) ? Caution.NOTE : Caution.NONE;
  }

  private static boolean reached(double wbgt, Constant from, Constants constants) {
    return !Double.isNaN(wbgt) && !Limit.below(wbgt, constants.of(from));
  }

  private static boolean possible(double celsius) {
    return Limit.within(celsius, COLDEST, HOTTEST);
  }
}
