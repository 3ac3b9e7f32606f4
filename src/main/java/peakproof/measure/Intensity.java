package peakproof.measure;

import org.jspecify.annotations.Nullable;
import peakproof.document.Effort;
import peakproof.document.Sport;
import peakproof.document.Target;

/**
 * How hard some work is.
 *
 * @param domain null when it cannot be told, and for strength work
 * @param rating 0 to 10; null when it cannot be told
 * @param race true at race effort
 */
record Intensity(@Nullable Domain domain, @Nullable Double rating, boolean race) {

  /** Of an effort word. */
  static Intensity of(Effort effort, Sport sport, Calibration athlete, Constants constants) {
    boolean racing = sport.racing();
    return switch (effort) {
      case DRILL -> of(racing, Domain.MODERATE, Constant.RATING_DRILL, constants);
      case EASY -> of(racing, Domain.MODERATE, Constant.RATING_EASY, constants);
      case STEADY -> of(racing, Domain.MODERATE, Constant.RATING_STEADY, constants);
      case THRESHOLD -> of(racing, Domain.HEAVY, Constant.RATING_THRESHOLD, constants);
      case HARD -> of(racing, Domain.SEVERE, Constant.RATING_HARD, constants);
      case MAX -> of(racing, Domain.SEVERE, Constant.RATING_MAX, constants);
      case RACE -> race(athlete, constants);
    };
  }

  /** Of a target, which speaks before the effort word beside it; null when it cannot be told. */
  static @Nullable Intensity of(
      Target target, boolean race, Sport sport, Calibration athlete, Constants constants) {
    boolean goal = GoalEffort.matches(target, sport, athlete, constants);
    if (goal && !(target instanceof Target.Rating)) {
      return race(athlete, constants);
    }
    Domain domain = DomainEdges.of(target, sport, athlete, constants);
    if (domain == null) {
      return null;
    }
    double rating =
        target instanceof Target.Rating stated ? stated.rating() : constants.of(ratingOf(domain));
    return new Intensity(domain, rating, race || goal);
  }

  /** The rating a domain stands for. */
  static Constant ratingOf(Domain domain) {
    return switch (domain) {
      case MODERATE -> Constant.RATING_DOMAIN_MODERATE;
      case HEAVY -> Constant.RATING_DOMAIN_HEAVY;
      case SEVERE -> Constant.RATING_DOMAIN_SEVERE;
    };
  }

  private static Intensity of(boolean racing, Domain domain, Constant rating, Constants constants) {
    return new Intensity(racing ? domain : null, constants.of(rating), false);
  }

  private static Intensity race(Calibration athlete, Constants constants) {
    DistanceClass distance = athlete.distance();
    if (distance == null) {
      return new Intensity(null, null, true);
    }
    return switch (distance) {
      case FULL -> new Intensity(Domain.HEAVY, constants.of(Constant.RATING_RACE_FULL), true);
      case HALF -> new Intensity(Domain.HEAVY, constants.of(Constant.RATING_RACE_HALF), true);
      case STANDARD ->
          new Intensity(Domain.HEAVY, constants.of(Constant.RATING_RACE_STANDARD), true);
      case SPRINT -> new Intensity(Domain.SEVERE, constants.of(Constant.RATING_RACE_SPRINT), true);
    };
  }
}
