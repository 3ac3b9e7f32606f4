package peakproof.fact;

import peakproof.document.Sport;

/** Strength work. */
public final class Strength extends Session {
  Strength(Draft draft) {
    super(draft);
  }

  @Override
  Sport sport() {
    return Sport.STRENGTH;
  }
}
