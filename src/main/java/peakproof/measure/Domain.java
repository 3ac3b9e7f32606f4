package peakproof.measure;

import java.util.Locale;

/** The three domains of exercise intensity, apart at the first threshold and at critical power. */
public enum Domain {
  MODERATE,
  HEAVY,
  SEVERE;

  /** The word of the settings and reports: {@code moderate}, … */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
