package peakproof.fact;

/** Where a day's training is known from. */
enum Known {
  /** Logged, or a rest day of a log declared complete. */
  DONE,
  /** From the plan. */
  PLANNED,
  /** Past, and the log does not tell. */
  UNKNOWN,
  /** To come, in a week not written yet. */
  UNWRITTEN
}
