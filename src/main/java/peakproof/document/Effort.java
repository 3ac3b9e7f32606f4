package peakproof.document;

/**
 * The effort words of a set line, easiest first but for the race, which depends on the distance.
 */
public enum Effort {
  DRILL,
  EASY,
  STEADY,
  RACE,
  THRESHOLD,
  HARD,
  MAX
}
