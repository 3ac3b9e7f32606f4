package peakproof.document;

import java.util.Locale;

/** What a session is done in; the word is also its key in a plan or log. */
public enum Sport {
  SWIM,
  BIKE,
  RUN,
  STRENGTH,
  OTHER;

  /** The word of the documents: {@code swim}, {@code bike}, … */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** True for the three sports of the race. */
  public boolean racing() {
    return this == SWIM || this == BIKE || this == RUN;
  }
}
