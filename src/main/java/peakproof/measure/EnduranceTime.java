package peakproof.measure;

import static java.lang.Math.log;
import static java.lang.Math.pow;

import org.jspecify.annotations.Nullable;

/**
 * Endurance-time scaling, Riegel 1981, American Scientist 69:285: time grows as distance to the
 * power of about 1.06. In 2303 recreational runners it was good up to the half-marathon but half of
 * them ran the marathon at least ten minutes slower (Vickers and Vertosick 2016), hence the
 * cautious exponent beside it.
 */
public final class EnduranceTime {
  private EnduranceTime() {}

  /**
   * The time in seconds for a distance, from another distance and its time; unknown unless all are
   * above zero.
   */
  public static Amount scaled(double metres, double seconds, double toMetres, double exponent) {
    return Limit.positive(metres) && Limit.positive(seconds) && Limit.positive(toMetres)
        ? Amount.of(seconds * pow(toMetres / metres, exponent))
        : Amount.unknown("two distances and a time above zero");
  }

  /**
   * The athlete's own exponent from two races; null when the distances are equal or the exponent is
   * outside the accepted range (1.02 to 1.20).
   */
  public static @Nullable Double personalExponent(
      double metres, double seconds, double otherMetres, double otherSeconds, Constants constants) {
    double exponent = log(otherSeconds / seconds) / log(otherMetres / metres);
    boolean accepted =
        Double.isFinite(exponent)
            && !Limit.below(exponent, constants.of(Constant.RIEGEL_PERSONAL_FROM))
            && !Limit.above(exponent, constants.of(Constant.RIEGEL_PERSONAL_TO));
    return accepted ? exponent : null;
  }
}
