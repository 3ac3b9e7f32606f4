package peakproof.intake;

import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Quantity;
import peakproof.document.Session;
import peakproof.document.SetLine;
import peakproof.document.SetLines;

/**
 * How long and how far a session was and when it began, by which two records of it are known to be
 * one.
 *
 * @param seconds null when unsaid
 * @param metres null when unsaid
 * @param start null when unsaid
 */
record Extent(@Nullable Double seconds, @Nullable Double metres, @Nullable LocalTime start) {
  /** Clocks and zones differ less, two sessions of a sport on a day begin further apart. */
  private static final int SAME_START = 15 * 60;

  private static final int OTHER_START = 4 * 3600;
  private static final double SHARE = 0.05;
  private static final double SECONDS = 120;
  private static final double METRES = 100;

  /** Whether two records of a sport on one day are of one session. */
  enum Likeness {
    SAME,
    /** They say nothing in common. */
    PERHAPS,
    OTHER
  }

  static Extent of(Session session) {
    SetLine set = session.set();
    Double metres = session.recorded().metres();
    return new Extent(
        session.recorded().seconds(),
        metres == null && set != null ? metres(set.parts()) : metres,
        session.time());
  }

  static Extent of(Incoming session) {
    String amount = session.amount().split("\\s+", 2)[0];
    Double metres = Quantity.distance(session.text("distance")).orNull();
    SetLine.Work work = Quantity.amount(amount, session.sport(), false).orNull();
    Double seconds =
        work instanceof SetLine.Time time
            ? Double.valueOf(time.seconds())
            : Quantity.duration(session.text("time")).orNull();
    if (work instanceof SetLine.Distance distance) {
      metres = distance.metres();
    } else if (metres == null && session.sport().racing()) {
      SetLine set = SetLines.read(session.amount(), session.sport()).orNull();
      metres = set == null ? null : metres(set.parts());
    }
    return new Extent(seconds, metres, Quantity.time(session.text("at")).orNull());
  }

  /** The length of a set line; null when any part of it is a time. */
  private static @Nullable Double metres(List<SetLine.Part> parts) {
    double sum = 0;
    for (SetLine.Part part : parts) {
      Double one =
          part.work() instanceof SetLine.Distance distance
              ? Double.valueOf(distance.metres())
              : part.work() instanceof SetLine.Group group ? metres(group.parts()) : null;
      if (one == null) {
        return null;
      }
      sum += part.count() * one;
    }
    return sum;
  }

  Likeness likeness(Extent other) {
    if (start != null && other.start != null) {
      int apart = Math.abs(start.toSecondOfDay() - other.start.toSecondOfDay());
      if (apart <= SAME_START) {
        return Likeness.SAME;
      }
      if (apart > OTHER_START) {
        return Likeness.OTHER;
      }
    }
    boolean timed = seconds != null && other.seconds != null;
    boolean measured = metres != null && other.metres != null;
    boolean near = near(seconds, other.seconds, SECONDS) || near(metres, other.metres, METRES);
    return near ? Likeness.SAME : timed || measured ? Likeness.OTHER : Likeness.PERHAPS;
  }

  private static boolean near(@Nullable Double one, @Nullable Double other, double least) {
    return one != null
        && other != null
        && Math.abs(one - other) <= Math.max(least, SHARE * Math.max(one, other));
  }

  /** How far apart two of one session are: 0 for equal, to choose among several. */
  double distanceTo(Extent other) {
    double begun =
        start == null || other.start == null
            ? 1
            : Math.abs(start.toSecondOfDay() - other.start.toSecondOfDay()) / 3600.0;
    return begun + apart(seconds, other.seconds) + apart(metres, other.metres);
  }

  private static double apart(@Nullable Double one, @Nullable Double other) {
    return one == null || other == null ? 1 : Math.abs(one - other) / Math.max(one, other);
  }
}
