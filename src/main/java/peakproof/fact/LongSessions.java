package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.measure.Constant;
import peakproof.measure.Coverage;

/** How long a session is beside those of its sport in the eight weeks before, and what is long. */
final class LongSessions {
  private final Timeline timeline;
  private final Memo<Session, Double> leastMinutes = new Memo<>(this::leastMinutesOf);
  private final Memo<Session, Double> longestBefore = new Memo<>(this::longestBeforeOf);

  LongSessions(Timeline timeline) {
    this.timeline = timeline;
  }

  /** Minutes from which a ride or a run is a long one. */
  double leastMinutes(Session session) {
    return Objects.requireNonNull(leastMinutes.of(session));
  }

  private double leastMinutesOf(Session session) {
    double usual =
        timeline.constant(session.sport() == Sport.RUN ? Constant.LONG_RUN : Constant.LONG_RIDE);
    Double longest = knowsWeeksBefore(session) ? longestBefore(session) : null;
    double least =
        timeline.effort().shortCourse()
            ? usual * timeline.constant(Constant.LONG_SHORT_COURSE)
            : usual;
    return longest == null
        ? least
        : Math.min(least, timeline.constant(Constant.LONG_SHARE) * longest);
  }

  /** A share of the longest says nothing while the longest may lie in days nobody wrote down. */
  private boolean knowsWeeksBefore(Session session) {
    LocalDate from = from(session);
    int days = (int) ChronoUnit.DAYS.between(from, session.date());
    int known = timeline.diary().known(from, session.date().minusDays(1));
    return new Coverage(known, days).enough(timeline.constants());
  }

  /** The longest session of the same sport in the eight weeks before, minutes; null without one. */
  @Nullable Double longestBefore(Session session) {
    return longestBefore.of(session);
  }

  private @Nullable Double longestBeforeOf(Session session) {
    LocalDate from = from(session);
    Double written = longest(session.sport(), from, session.date().minusDays(1));
    Double stated = from.isBefore(timeline.asOf()) ? stated(session.sport()) : null;
    return written == null || stated == null
        ? written == null ? stated : written
        : (Double) Math.max(written, stated);
  }

  private @Nullable Double longest(Sport sport, LocalDate from, LocalDate to) {
    Double longest = null;
    for (Day day : timeline.diary().between(from, to)) {
      for (Session session : day.sessions()) {
        Double minutes = session.minutes();
        if (session.sport() == sport && minutes != null) {
          longest = longest == null ? minutes : (Double) Math.max(longest, minutes);
        }
      }
    }
    return longest;
  }

  private @Nullable Double stated(Sport sport) {
    if (!timeline.hasLately()) {
      return null;
    }
    Double seconds =
        switch (sport) {
          case BIKE -> timeline.lately().longestRideSeconds();
          case RUN -> timeline.lately().longestRunSeconds();
          default -> null;
        };
    return seconds == null ? null : (Double) (seconds / 60);
  }

  /** False when the log is too old to tell the longest of the eight weeks before. */
  boolean longestIsLogged(Session session) {
    return timeline.unloggedSince(from(session), session.date().minusDays(1)) == null;
  }

  private LocalDate from(Session session) {
    return session.date().minusWeeks((long) timeline.constant(Constant.LONG_WEEKS));
  }
}
