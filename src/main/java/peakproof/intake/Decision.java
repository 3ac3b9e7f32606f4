package peakproof.intake;

import org.jspecify.annotations.Nullable;

/**
 * What becomes of an incoming session.
 *
 * @param why why it is not taken; null when it is
 * @param left what of it the place it goes to cannot hold; empty when all of it goes in
 */
public record Decision(Incoming session, @Nullable String why, String left) {
  /** A session that goes in. */
  public static Decision of(Incoming session) {
    return new Decision(session, null, "");
  }

  static Decision skipped(Incoming session, String why) {
    return new Decision(session, why, "");
  }

  /** True when it goes in. */
  public boolean taken() {
    return why == null;
  }
}
