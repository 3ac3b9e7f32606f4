package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether strength work is enough to keep strength: one session a week held it for up to 32 weeks
 * in the young, two may be needed later in life (Spiering 2021, doi 10.1519/JSC.0000000000003964).
 * The minutes of a session and the age are common practice, no source.
 *
 * @param sessions a week that were long enough to count
 * @param minutes a week, all of them
 * @param enough null when the athlete's age decides and is unknown, or minutes are
 */
public record StrengthDose(int sessions, Amount minutes, @Nullable Boolean enough) {

  /**
   * Of one week.
   *
   * @param minutes of each strength session; null for unknown ones
   * @param age years; null when unknown
   */
  public static StrengthDose of(
      List<@Nullable Double> minutes, @Nullable Double age, Constants constants) {
    double least = constants.of(Constant.STRENGTH_SESSION_LEAST);
    int counted = 0;
    for (Double session : minutes) {
      counted +=
          session != null && Limit.countable(session) && !Limit.below(session, least) ? 1 : 0;
    }
    Double total = Days.sound(minutes) ? Days.total(minutes) : null;
    Amount all = total == null ? Amount.unknown("the length of every session") : Amount.of(total);
    return new StrengthDose(counted, all, enough(counted, all.known(), age, constants));
  }

  private static @Nullable Boolean enough(
      int counted, boolean known, @Nullable Double age, Constants constants) {
    double young = constants.of(Constant.STRENGTH_SESSIONS);
    double old = constants.of(Constant.STRENGTH_SESSIONS_OLDER);
    boolean older = age != null && !Limit.below(age, constants.of(Constant.STRENGTH_OLDER_FROM));
    boolean aged = age != null && Double.isFinite(age);
    if (counted >= Math.max(young, old) || (aged && counted >= (older ? old : young))) {
      return true;
    }
    boolean undecided = !known || (!aged && counted >= Math.min(young, old));
    return undecided ? null : (Boolean) false;
  }
}
