package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far a taper cuts the daily volume below that of the weeks before it. Two weeks of 41 to 60 %
 * less with intensity kept did best (Bosquet 2007, doi 10.1249/mss.0b013e31806010e0; Wang 2023, doi
 * 10.1371/journal.pone.0282838).
 *
 * @param reduction 0.47 for 47 % less, negative for more; null when unknown
 * @param referenceDay mean daily amount of the weeks before, or null
 * @param because why it is unknown; empty when known
 */
public record TaperReduction(
    @Nullable Double reduction, @Nullable Double referenceDay, String because) {
  private static final double DAYS_A_WEEK = 7;

  /**
   * Compares the days of a taper with the last four weeks before it that were not lighter.
   *
   * @param days amount of each day of the taper, the race day left out; null for an unknown one
   * @param before the weeks before, oldest first; three of the four must be known
   */
  public static TaperReduction of(
      List<@Nullable Double> days, List<WeekVolume> before, Constants constants) {
    Double week = WeekVolume.reference(before, constants);
    Double day = WeekVolume.mean(days, days.size(), constants);
    if (week == null) {
      return new TaperReduction(null, null, "too few known weeks before the taper");
    }
    double reference = week / DAYS_A_WEEK;
    if (day == null) {
      return new TaperReduction(null, reference, "too few known days of the taper");
    }
    double reduction = 1 - day / reference;
    return Double.isFinite(reduction)
        ? new TaperReduction(reduction, reference, "")
        : new TaperReduction(null, reference, "nothing was done in the weeks before the taper");
  }
}
