package peakproof.measure;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The longest stretch without rest, or with rests of at most 10 s each of which is at most 10 % of
 * the time since the rest before. Common practice, no source.
 */
final class Continuity {
  private final Constants constants;
  private double longest;
  private double current;
  private @Nullable Double sinceRest = 0.0;

  private Continuity(Constants constants) {
    this.constants = constants;
  }

  /**
   * The longest amount of one stretch.
   *
   * @param counts which work belongs to a stretch; other work ends it
   * @param amount of a piece of work
   * @return null when an amount is unknown, or a rest that may or may not end a stretch
   */
  static @Nullable Double longest(
      List<Piece> pieces,
      Predicate<Piece.Work> counts,
      Function<Piece.Work, @Nullable Double> amount,
      Constants constants) {
    Continuity continuity = new Continuity(constants);
    for (Piece piece : pieces) {
      boolean known =
          piece instanceof Piece.Work work
              ? continuity.work(work, counts, amount)
              : continuity.pause(piece.seconds());
      if (!known) {
        return null;
      }
    }
    return Amount.finite(continuity.longest);
  }

  private boolean work(
      Piece.Work work,
      Predicate<Piece.Work> counts,
      Function<Piece.Work, @Nullable Double> amount) {
    Double seconds = work.seconds();
    sinceRest = seconds == null || sinceRest == null ? null : sinceRest + seconds;
    if (!counts.test(work)) {
      current = 0;
      return true;
    }
    Double more = amount.apply(work);
    if (more == null) {
      return false;
    }
    current += more;
    longest = Math.max(longest, current);
    return true;
  }

  /** False when it cannot be told whether the pause ends the stretch. */
  private boolean pause(@Nullable Double seconds) {
    Double worked = sinceRest;
    sinceRest = 0.0;
    if (seconds == null) {
      return false;
    }
    if (Limit.above(seconds, constants.of(Constant.CONTINUOUS_REST))) {
      current = 0;
      return true;
    }
    if (worked == null) {
      return seconds == 0;
    }
    double share = constants.of(Constant.CONTINUOUS_REST_SHARE);
    if (Limit.above(seconds, share * (worked + seconds))) {
      current = 0;
    }
    return true;
  }
}
