package peakproof.fact;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A count, sum or longest over the sessions of a window: what is known for certain, and the entry
 * that would settle the rest.
 *
 * @param value the count or maximum over what is known; a lower bound while {@code doubt} stands
 * @param doubt the entry that is missing, or null when nothing is
 */
record Tally(double value, @Nullable String doubt) {
  /** The entry that tells how hard a swim or ride was. */
  static final String BRISK = "set lines of the swims and rides in the log";

  /** What leaves no doubt. */
  static Tally certain(double value) {
    return new Tally(value, null);
  }

  /** Minutes of the sessions whose length is known. */
  static double minutes(List<? extends Session> sessions) {
    return Exact.of(
        sessions.stream()
            .map(Session::minutes)
            .filter(Objects::nonNull)
            .mapToDouble(Double::doubleValue)
            .sum());
  }

  /**
   * How many sessions have a quality; a session that does not say is a doubt about {@code entry}.
   */
  static <S> Tally count(List<S> sessions, Function<S, @Nullable Boolean> quality, String entry) {
    long count = 0;
    boolean doubt = false;
    for (S session : sessions) {
      Boolean has = quality.apply(session);
      count += Boolean.TRUE.equals(has) ? 1 : 0;
      doubt |= has == null;
    }
    return new Tally(count, doubt ? entry : null);
  }

  /** The largest of a quantity, 0 over no session; a session that does not say is a doubt. */
  static <S> Tally longest(List<S> sessions, Function<S, @Nullable Double> quantity, String entry) {
    double longest = 0;
    boolean doubt = false;
    for (S session : sessions) {
      Double value = quantity.apply(session);
      longest = value == null ? longest : Math.max(longest, value);
      doubt |= value == null;
    }
    return new Tally(longest, doubt ? entry : null);
  }

  /** The same with what the coach states of the last weeks. */
  Tally orStated(@Nullable Double stated) {
    return stated == null ? this : new Tally(Math.max(value, stated), doubt);
  }

  /** The same for minutes, of a statement in seconds. */
  Tally orStatedSeconds(@Nullable Double stated) {
    return orStated(stated == null ? null : (Double) (stated / 60));
  }
}
