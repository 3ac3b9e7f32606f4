package peakproof.document;

/** What a part of a set line is held at. */
public sealed interface Target {
  /** A pace, in seconds per metre; swim targets are written per 100 m, run targets per km. */
  record Pace(double secondsPerMetre) implements Target {}

  /** A heart rate in beats per minute. */
  record HeartRate(double bpm) implements Target {}

  /** A share of the highest heart rate, 0.70 for {@code 70%maxhr}. */
  record ShareOfMaximum(double share) implements Target {}

  /** A share of the heart-rate reserve, 0.65 for {@code 65%hrr}. */
  record ShareOfReserve(double share) implements Target {}

  /** Power in watts. */
  record Power(double watts) implements Target {}

  /** A share of critical power, 0.85 for {@code 85%cp}. */
  record ShareOfCriticalPower(double share) implements Target {}

  /** A rating on the category-ratio scale, 0 to 10. */
  record Rating(double rating) implements Target {}
}
