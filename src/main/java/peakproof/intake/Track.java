package peakproof.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a recorded track comes to.
 *
 * @param metres along its segments; what lies between two segments does not count
 * @param movingSeconds of its segments without the pauses
 * @param climb metres; null when fewer than nine of ten points have an elevation
 * @param heartRate mean over the moving time, beats a minute; null when less than half of it has
 *     readings
 */
record Track(
    double metres, double movingSeconds, @Nullable Double climb, @Nullable Double heartRate) {
  /** Staying within so many metres of a point for longer than so many seconds is a pause. */
  static final double PAUSE_METRES = 8;

  static final double PAUSE_SECONDS = 30;

  /**
   * Elevation counts once it has changed by so much since it last did, which keeps the receiver's
   * wavering out of the sum (common practice, no source).
   */
  static final double CLIMB_STEP = 5;

  private static final double MOST_POINTS = 0.9;
  private static final double HALF = 0.5;

  /** Readings further apart leave a gap. */
  private static final double READING_SECONDS = 60;

  /**
   * Works a track out.
   *
   * @param segments each with its points in order of time
   */
  static Track of(List<List<TrackPoint>> segments) {
    double metres = 0;
    double moving = 0;
    double climb = 0;
    double beats = 0;
    double measured = 0;
    long points = 0;
    long withElevation = 0;
    for (List<TrackPoint> written : segments) {
      List<TrackPoint> segment = distinct(written);
      boolean[] paused = paused(segment);
      for (int i = 1; i < segment.size(); i++) {
        TrackPoint from = segment.get(i - 1);
        TrackPoint to = segment.get(i);
        double seconds = from.secondsTo(to);
        metres += from.metresTo(to);
        moving += paused[i] ? 0 : seconds;
        Double before = from.heartRate();
        Double after = to.heartRate();
        if (before != null && after != null && !paused[i] && seconds <= READING_SECONDS) {
          beats += seconds * (before + after) / 2;
          measured += seconds;
        }
      }
      climb += climb(segment);
      points += segment.size();
      withElevation += segment.stream().filter(point -> point.elevation() != null).count();
    }
    return new Track(
        metres,
        moving,
        withElevation < MOST_POINTS * points ? null : climb,
        measured == 0 || measured < HALF * moving ? null : beats / measured);
  }

  /** Of points at one time the first counts. */
  private static List<TrackPoint> distinct(List<TrackPoint> segment) {
    List<TrackPoint> distinct = new ArrayList<>();
    for (TrackPoint point : segment) {
      if (distinct.isEmpty() || !distinct.get(distinct.size() - 1).time().equals(point.time())) {
        distinct.add(point);
      }
    }
    return distinct;
  }

  /** For each point whether the way to it from the one before belongs to a pause. */
  private static boolean[] paused(List<TrackPoint> segment) {
    boolean[] paused = new boolean[segment.size()];
    int from = 0;
    while (from < segment.size()) {
      TrackPoint anchor = segment.get(from);
      int last = from;
      while (last + 1 < segment.size() && anchor.metresTo(segment.get(last + 1)) <= PAUSE_METRES) {
        last++;
      }
      if (anchor.secondsTo(segment.get(last)) > PAUSE_SECONDS) {
        Arrays.fill(paused, from + 1, last + 1, true);
        from = last;
      }
      from = secondLater(segment, from);
    }
    return paused;
  }

  /** Points in quick succession are looked at once a second, so that none costs much time. */
  private static int secondLater(List<TrackPoint> segment, int from) {
    int next = from + 1;
    while (next < segment.size() && segment.get(from).secondsTo(segment.get(next)) < 1) {
      next++;
    }
    return next;
  }

  private static double climb(List<TrackPoint> segment) {
    double climb = 0;
    Double level = null;
    for (TrackPoint point : segment) {
      Double elevation = point.elevation();
      if (elevation == null) {
        continue;
      }
      if (level == null || Math.abs(elevation - level) >= CLIMB_STEP) {
        climb += level == null ? 0 : Math.max(0, elevation - level);
        level = elevation;
      }
    }
    return climb;
  }
}
