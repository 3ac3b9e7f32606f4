package peakproof.begin;

/**
 * How much one week has: minutes, and metres of swimming.
 *
 * @param week minutes in all
 * @param longRide minutes of the long ride
 * @param longRun minutes of the long run
 * @param longSwim metres to be swum without a rest
 */
record WeekAmounts(double week, double longRide, double longRun, double longSwim) {}
