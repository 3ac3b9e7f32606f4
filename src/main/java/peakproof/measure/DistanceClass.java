package peakproof.measure;

import java.util.Locale;

/** Distance class of a race, by its bike leg. */
public enum DistanceClass {
  FULL,
  HALF,
  STANDARD,
  SPRINT;

  /** The word of the documents and settings: {@code full}, … */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** How a setting that differs by distance ends: {@code -full}, … */
  public String suffix() {
    return "-" + word();
  }
}
