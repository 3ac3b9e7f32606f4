package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What can be counted of the rides of a window. */
final class RideCounts {
  private RideCounts() {}

  /** The count of that name; null when it is none of these. */
  static @Nullable Tally of(String name, Span span) {
    Skills skills = span.timeline.skills();
    return switch (name) {
      case "longestRideMinutes" ->
          Tally.longest(span.rides, Ride::minutes, "time of the rides")
              .orStatedSeconds(
                  span.statesLately() ? span.timeline.lately().longestRideSeconds() : null);
      case "longRideEffortShare" ->
          Tally.longest(
              span.longRides, Ride::raceEffortShare, "heart rate or power of the long rides");
      case "longestRaceClothingRideMinutes" ->
          Tally.longest(span.rides, skills::raceClothingMinutes, "kit of the rides");
      case "raceBikeRides" -> Tally.count(span.rides, skills::raceBike, "kit of the rides");
      case "longRides" -> Tally.certain(span.longRides.size());
      case "briskRides" -> Tally.count(span.rides, Ride::brisk, Tally.BRISK);
      case "aeroShare" -> skills.aeroShare(span.longRides);
      case "longRideClimbRate" ->
          Tally.longest(span.longRides, Ride::climbRate, "climb and distance of the long rides");
      case "groupShare" -> Tally.certain(groupShare(span.longRides));
      default -> null;
    };
  }

  private static double groupShare(List<Ride> longRides) {
    double all = Tally.minutes(longRides);
    return all > 0 ? Tally.minutes(longRides.stream().filter(Ride::inGroup).toList()) / all : 0;
  }
}
