package peakproof.measure;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How long a taper is: from the first week of at most 85 % of the weeks before it to race day. The
 * share is common practice, no source.
 *
 * @param days from the onset to race day; null when unknown
 * @param onset first day of that week; null when unknown
 * @param because why there is none; empty when there is one
 */
public record TaperLength(@Nullable Long days, @Nullable LocalDate onset, String because) {

  /** A taper week by its first day; null for an unknown volume. */
  public record Week(LocalDate starts, @Nullable Double volume) {}

  /**
   * Of the taper weeks, oldest first, against the mean of the last four weeks before them that were
   * not lighter, three of which must be known. An unknown week before the onset leaves it unknown.
   */
  public static TaperLength of(
      List<Week> taper, List<WeekVolume> before, LocalDate race, Constants constants) {
    Double reference = WeekVolume.reference(before, constants);
    if (reference == null || reference <= 0) {
      return unknown("too few known weeks before the taper");
    }
    double most = reference * constants.of(Constant.TAPER_ONSET);
    for (Week week : taper) {
      if (week.volume == null || !Limit.countable(week.volume)) {
        return unknown("one of the taper weeks is not known whole");
      }
      if (week.starts.isBefore(race) && !Limit.above(week.volume, most)) {
        return new TaperLength(ChronoUnit.DAYS.between(week.starts, race), week.starts, "");
      }
    }
    return unknown("no week is light enough to be a taper");
  }

  private static TaperLength unknown(String because) {
    return new TaperLength(null, null, because);
  }
}
