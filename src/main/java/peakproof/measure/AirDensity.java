package peakproof.measure;

/** Density of dry air by the gas law. */
public final class AirDensity {
  /** Gas constant of dry air, J/(kg K). */
  private static final double GAS = 287.058;

  private static final double KELVIN = 273.15;
  private static final double COLDEST = -60;
  private static final double HOTTEST = 60;
  private static final double LOWEST = 30_000;
  private static final double HIGHEST = 120_000;

  private AirDensity() {}

  /**
   * Kilograms a cubic metre.
   *
   * @param celsius −60 to 60
   * @param pascals 30 000 to 120 000; 101 325 at sea level
   */
  public static Amount of(double celsius, double pascals) {
    boolean there =
        Limit.within(celsius, COLDEST, HOTTEST) && Limit.within(pascals, LOWEST, HIGHEST);
    return there
        ? Amount.of(pascals / (GAS * (celsius + KELVIN)))
        : Amount.unknown("the temperature and pressure of outdoor air");
  }
}
