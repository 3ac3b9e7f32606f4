package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rating expected of a planned session: the larger of the time-weighted mean of its parts, with
 * passive rest at 1, and the rating of the hardest domain held for 6 min in total, less 1. Common
 * practice, no source.
 */
final class PlannedRating {
  private PlannedRating() {}

  /** Null when a part's minutes or rating are unknown. */
  static @Nullable Double of(
      List<Piece.Work> work,
      @Nullable Double restMinutes,
      DomainMinutes domains,
      Constants constants) {
    Double minutes = SetPieces.minutes(work);
    Double weighed = weighed(work);
    if (minutes == null || weighed == null || restMinutes == null || minutes + restMinutes <= 0) {
      return null;
    }
    double rest = restMinutes * constants.of(Constant.RATING_REST);
    double mean = (weighed + rest) / (minutes + restMinutes);
    Domain hardest = domains.hardestHeld(constants.of(Constant.HARDEST_DOMAIN_HELD));
    if (hardest == null) {
      return Amount.finite(mean);
    }
    double least =
        constants.of(Intensity.ratingOf(hardest)) - constants.of(Constant.HARDEST_DOMAIN_LESS);
    return Amount.finite(Math.max(mean, least));
  }

  private static @Nullable Double weighed(List<Piece.Work> work) {
    double sum = 0;
    for (Piece.Work each : work) {
      Double seconds = each.seconds();
      Double rating = each.intensity().rating();
      if (seconds == null || rating == null) {
        return null;
      }
      sum += seconds / SetPieces.SECONDS_A_MINUTE * rating;
    }
    return sum;
  }
}
