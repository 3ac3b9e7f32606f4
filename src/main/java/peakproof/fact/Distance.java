package peakproof.fact;

import java.util.Locale;

/** Distance class of a race, by its bike leg. */
public enum Distance {
  FULL,
  HALF,
  STANDARD,
  SPRINT;

  /** The word of the documents and settings: {@code full}, … */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  String suffix() {
    return "-" + word();
  }
}
