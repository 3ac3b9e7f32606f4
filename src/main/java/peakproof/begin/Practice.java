package peakproof.begin;

import peakproof.measure.DistanceClass;

/**
 * What training for a distance usually looks like. All numbers: common practice, no source; a house
 * that asks for more in a rule's settings gets more.
 *
 * @param swim share of the week's hours
 * @param bike the same
 * @param run the same
 * @param longRide minutes of the longest ride
 * @param longRun minutes of the longest run
 * @param offLongRide minutes of the run after the long ride
 * @param repetition metres of a repetition at race pace in the pool
 * @param raceWeek size of race week, of a full one; shorter races are sharpened for on less
 */
record Practice(
    double swim,
    double bike,
    double run,
    int longRide,
    int longRun,
    int offLongRide,
    int repetition,
    double raceWeek) {

  static Practice of(DistanceClass distance) {
    return switch (distance) {
      case FULL -> new Practice(0.18, 0.54, 0.28, 285, 125, 30, 400, 1.0);
      case HALF -> new Practice(0.20, 0.48, 0.32, 195, 100, 30, 400, 0.9);
      case STANDARD -> new Practice(0.24, 0.44, 0.32, 120, 65, 15, 200, 0.8);
      case SPRINT -> new Practice(0.26, 0.42, 0.32, 75, 45, 10, 100, 0.7);
    };
  }
}
