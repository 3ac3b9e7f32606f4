package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Session;

/**
 * Session-RPE load: minutes times the rating of the whole session, in arbitrary units (Foster 1998,
 * Med Sci Sports Exerc 30:1164; Foster 2001, J Strength Cond Res 15:109).
 */
public final class SessionLoad {
  private SessionLoad() {}

  /** Minutes times rating, 0 to 10; null when either is unknown or none: nothing is imputed. */
  public static @Nullable Double of(@Nullable Double minutes, @Nullable Double rating) {
    if (minutes == null || rating == null) {
      return null;
    }
    double load = minutes * rating;
    return Double.isFinite(load) ? (Double) load : null;
  }

  /** What a logged session weighed; what follows it is a session of its own. */
  public static @Nullable Double logged(Session session) {
    Double seconds = session.recorded().seconds();
    Double minutes = seconds == null ? null : seconds / SetPieces.SECONDS_A_MINUTE;
    return of(minutes, session.recorded().rpe());
  }

  /**
   * What a planned session is expected to weigh, before any scaling to the athlete; what follows it
   * is a session of its own.
   *
   * @param breakdown of its set line
   * @param strength what it says of strength work; null for other work
   */
  public static @Nullable Double planned(
      SetBreakdown breakdown, Session.@Nullable Strength strength, Constants constants) {
    return strength == null || strength.load() == null
        ? breakdown.load()
        : of(breakdown.minutes(), constants.of(strengthRating(strength.load())));
  }

  /**
   * What planned loads are multiplied by: the athlete's median ratio of logged to planned load over
   * matched pairs; 1 with fewer than six pairs.
   */
  public static double scale(List<Pair> pairs, Constants constants) {
    List<Double> ratios =
        pairs.stream()
            .filter(pair -> Limit.positive(pair.planned) && Limit.countable(pair.logged))
            .map(pair -> pair.logged / pair.planned)
            .filter(Double::isFinite)
            .toList();
    Double median = Median.of(ratios);
    boolean enough = ratios.size() >= constants.of(Constant.SCALE_PAIRS);
    return median == null || median <= 0 || !enough ? 1 : median;
  }

  /** The loads of a planned session and the logged one matched to it. */
  public record Pair(double planned, double logged) {}

  private static Constant strengthRating(String load) {
    return switch (load) {
      case "light" -> Constant.RATING_STRENGTH_LIGHT;
      case "moderate" -> Constant.RATING_STRENGTH_MODERATE;
      case "heavy" -> Constant.RATING_STRENGTH_HEAVY;
      default -> Constant.RATING_STRENGTH_UNSAID;
    };
  }
}
