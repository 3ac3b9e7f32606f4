package peakproof.intake;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import peakproof.document.Place;

/**
 * A point of a recorded track, on the WGS 84 ellipsoid as GPX has it.
 *
 * @param latitude degrees, north positive
 * @param longitude degrees, east positive
 * @param elevation metres
 * @param heartRate beats a minute
 */
record TrackPoint(
    Place place,
    double latitude,
    double longitude,
    Instant time,
    @Nullable Double elevation,
    @Nullable Double heartRate) {
  private static final double SEMI_MAJOR_AXIS = 6_378_137.0;
  private static final double FLATTENING = 1 / 298.257223563;
  private static final double ECCENTRICITY_SQUARED = FLATTENING * (2 - FLATTENING);

  /**
   * Metres along the ellipsoid, elevation left out, by the two radii of curvature half-way between
   * the points: for the few metres between two points of a track as good as a geodesic. Constants:
   * NIMA TR8350.2, World Geodetic System 1984 (from memory).
   */
  double metresTo(TrackPoint other) {
    double middle = Math.toRadians((latitude + other.latitude) / 2);
    double sine = Math.sin(middle);
    double w = 1 - ECCENTRICITY_SQUARED * sine * sine;
    double meridian = SEMI_MAJOR_AXIS * (1 - ECCENTRICITY_SQUARED) / (w * Math.sqrt(w));
    double primeVertical = SEMI_MAJOR_AXIS / Math.sqrt(w);
    double turn = Math.IEEEremainder(other.longitude - longitude, 360);
    return Math.hypot(
        meridian * Math.toRadians(other.latitude - latitude),
        primeVertical * Math.cos(middle) * Math.toRadians(turn));
  }

  /** Seconds to a later point. */
  double secondsTo(TrackPoint later) {
    return Duration.between(time, later.time).toNanos() / 1e9;
  }
}
