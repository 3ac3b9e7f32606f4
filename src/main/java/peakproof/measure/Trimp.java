package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Training impulse by heart-rate reserve: minutes × reserve × a·e^(b × reserve), in arbitrary units
 * (Banister 1991; Morton, Fitz-Clark and Banister 1990, J Appl Physiol 69:1171, from memory).
 */
public final class Trimp {
  /** Three beats past a stated maximum, of the smallest reserve there is. */
  private static final double MOST_SHARE = 1.15;

  private Trimp() {}

  /** Which published coefficients count; nobody is guessed into one of them. */
  public enum Coefficients {
    MEN(Constant.TRIMP_MEN_FACTOR, Constant.TRIMP_MEN_EXPONENT),
    WOMEN(Constant.TRIMP_WOMEN_FACTOR, Constant.TRIMP_WOMEN_EXPONENT);

    private final Constant factor;
    private final Constant exponent;

    Coefficients(Constant factor, Constant exponent) {
      this.factor = factor;
      this.exponent = exponent;
    }

    /** The set for the word of the document, female or male; null when it does not say. */
    public static @Nullable Coefficients of(@Nullable String sex) {
      if ("female".equals(sex)) {
        return WOMEN;
      }
      return "male".equals(sex) ? MEN : null;
    }
  }

  /**
   * Some steady work.
   *
   * @param minutes from zero
   * @param reserve mean share of the heart-rate reserve, 0 to 1.15: the stated maximum may be a few
   *     beats low
   */
  public record Stretch(double minutes, double reserve) {}

  /**
   * The sum over stretches. Intervals need their own: the function bends upwards, so that the mean
   * of a session under-reads it.
   *
   * @param coefficients null while undeclared, which leaves the impulse unknown
   */
  public static Amount of(
      List<Stretch> stretches, @Nullable Coefficients coefficients, Constants constants) {
    if (coefficients == null) {
      return Amount.unknown("which coefficients count: the athlete's `sex` is not declared");
    }
    double a = constants.of(coefficients.factor);
    double b = constants.of(coefficients.exponent);
    double sum = 0;
    for (Stretch stretch : stretches) {
      if (!Limit.countable(stretch.minutes) || !Limit.within(stretch.reserve, 0, MOST_SHARE)) {
        return Amount.unknown("minutes, and heart rates from rest to maximum");
      }
      sum += stretch.minutes * stretch.reserve * a * Math.exp(b * stretch.reserve);
    }
    return Amount.of(sum);
  }
}
