package peakproof.measure;

import org.jspecify.annotations.Nullable;
import peakproof.document.SetLine;

/**
 * Equal repetitions off an interval or with rest: whether they can be swum as written. Plain
 * arithmetic; the least rest before a send-off is common practice, no source.
 *
 * @param count repetitions
 * @param metres of one repetition
 * @param pace s/100 m, or null when unknown
 * @param sendOff seconds from one start to the next, or null when unknown or rest is not asked for
 * @param rest seconds after each repetition but the last, negative when the send-off comes first;
 *     null when unknown
 * @param sessionSeconds from the first start to the end of the last repetition
 * @param density share of that time spent moving
 * @param feasible false when the rest before a send-off is shorter than 3 s; true when rest itself
 *     is asked for; null when the pace is unknown or only guessed from an effort word
 */
public record RepeatSet(
    int count,
    double metres,
    @Nullable Double pace,
    @Nullable Double sendOff,
    @Nullable Double rest,
    @Nullable Double sessionSeconds,
    @Nullable Double density,
    @Nullable Boolean feasible) {

  /**
   * Repetitions that leave every so many seconds, held at a pace in s/100 m. Null unless the metres
   * are a number from zero.
   */
  public static @Nullable RepeatSet offInterval(
      int count, double metres, double pace, double interval, Constants constants) {
    double moving = metres * pace / 100;
    double rest = interval - moving;
    boolean feasible = !Limit.below(rest, constants.of(Constant.SEND_OFF_REST_LEAST));
    return timed(count, metres, pace, interval, rest, feasible);
  }

  /**
   * Repetitions held at a pace in s/100 m, with so many seconds of rest between them. Null unless
   * the metres are a number from zero.
   */
  public static @Nullable RepeatSet withRest(int count, double metres, double pace, double rest) {
    return timed(count, metres, pace, metres * pace / 100 + rest, rest, true);
  }

  static @Nullable RepeatSet of(
      int count,
      double metres,
      @Nullable Double seconds,
      SetLine.@Nullable Rest rest,
      Constants constants) {
    Double sendOff = rest instanceof SetLine.SendOff off ? Amount.finite(off.seconds()) : null;
    Double after = rest instanceof SetLine.After pause ? Amount.finite(pause.seconds()) : null;
    Double pace = seconds == null ? null : Pace.per100m(metres, seconds).value();
    if (pace == null) {
      return Limit.countable(metres)
          ? new RepeatSet(count, metres, null, sendOff, after, null, null, null)
          : null;
    }
    return sendOff == null
        ? withRest(count, metres, pace, after == null ? 0 : after)
        : offInterval(count, metres, pace, sendOff, constants);
  }

  /**
   * The same where no pace is asked for: whoever is told to swim easily off an interval swims as
   * the interval allows, so that the clock cannot refute it, and a word is no pace to hold.
   */
  RepeatSet leftToTheSwimmer() {
    return new RepeatSet(count, metres, pace, sendOff, rest, sessionSeconds, density, null);
  }

  /** True when its pace is known because it is asked for, and not guessed from an effort word. */
  public boolean paced() {
    return feasible != null;
  }

  /** Seconds behind the send-off at the last start; zero when every start is met. */
  public @Nullable Double late() {
    return rest == null ? null : Amount.finite((count - 1) * Math.max(0, -rest));
  }

  /**
   * Repetitions after which the reserve above critical swim speed would be spent if no rest gave
   * any of it back: a warning, no law. Null when they are swum at or below critical swim speed, so
   * that none is spent.
   *
   * @param speed of the repetitions, m/s
   * @param criticalSpeed m/s
   * @param reserve metres
   * @param seconds of one repetition
   */
  public static @Nullable Double worstCase(
      double speed, double criticalSpeed, double reserve, double seconds) {
    double repetitions = reserve / ((speed - criticalSpeed) * seconds);
    boolean spent = Limit.above((speed - criticalSpeed) * seconds, 0);
    return spent && Double.isFinite(repetitions) ? (Double) repetitions : null;
  }

  private static @Nullable RepeatSet timed(
      int count, double metres, double pace, double interval, double rest, boolean feasible) {
    if (!Limit.countable(metres)) {
      return null;
    }
    double moving = metres * pace / 100;
    double session = (count - 1) * interval + moving;
    boolean sound = Limit.positive(moving) && Limit.positive(session) && Double.isFinite(rest);
    return sound
        ? new RepeatSet(
            count, metres, pace, interval, rest, session, count * (moving / session), feasible)
        : new RepeatSet(count, metres, null, null, null, null, null, null);
  }
}
