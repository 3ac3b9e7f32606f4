package peakproof.fact;

import java.util.Locale;

/** What a week is for. */
public enum Phase {
  BUILD,
  PEAK,
  TAPER,
  LIGHTER,
  CAMP;

  /** The word of the documents and cards: {@code build}, … */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
