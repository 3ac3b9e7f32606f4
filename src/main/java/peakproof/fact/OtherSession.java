package peakproof.fact;

import peakproof.document.Sport;

/** Anything else: a walk, a race on the way. */
public final class OtherSession extends Session {
  OtherSession(Draft draft) {
    super(draft);
  }

  @Override
  Sport sport() {
    return Sport.OTHER;
  }

  /** True for a race raced in full, which counts as hard. */
  @Override
  public boolean hard() {
    return written.race() != null && "full".equals(written.effort());
  }
}
