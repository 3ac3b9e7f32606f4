package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.PlanDay;
import peakproof.measure.Constant;
import peakproof.measure.Constants;

/**
 * One day of training before the race.
 *
 * @param log the log's entry, or null
 * @param plan the plan's day, or null when the plan does not list it
 */
record Day(
    LocalDate date,
    Known known,
    List<Session> sessions,
    Log.@Nullable Day log,
    @Nullable PlanDay plan,
    Constants constants) {

  boolean isKnown() {
    return known == Known.DONE || known == Known.PLANNED;
  }

  /** True when the coach can still change it. */
  boolean changeable() {
    return known == Known.PLANNED;
  }

  /** Minutes of training; null when a session's length is not known. */
  @Nullable Double minutes() {
    double sum = 0;
    for (Session session : sessions) {
      Double minutes = session.minutes();
      if (minutes == null) {
        return null;
      }
      sum += minutes;
    }
    return sum;
  }

  /** Nothing, or a short easy swim, or a little strength work. */
  boolean rest() {
    return isKnown() && sessions.stream().allMatch(this::restful);
  }

  private boolean restful(Session session) {
    Double minutes = session.minutes();
    if (minutes == null) {
      return false;
    }
    return switch (session.sport()) {
      case SWIM -> minutes <= constants.of(Constant.REST_DAY_SWIM) && session.easy();
      case STRENGTH -> minutes <= constants.of(Constant.REST_DAY_STRENGTH);
      default -> false;
    };
  }

  /** A hard session, a long run or a long ride. */
  boolean hard() {
    return sessions.stream().anyMatch(Session::hardOrLong);
  }

  /**
   * Whether some of it was, or is to be, in heat: said so, or in air as warm as the race's; null
   * when a ride or run of the log says nothing of it.
   *
   * @param raceAir °C; null when unknown
   */
  @Nullable Boolean heat(@Nullable Double raceAir) {
    boolean unsaid = false;
    for (Session session : sessions) {
      Double air = session.written.scene().air();
      if (session.written.scene().heat() || air != null && raceAir != null && air >= raceAir) {
        return true;
      }
      unsaid |= air == null && (session instanceof Ride || session instanceof Run);
    }
    return unsaid && known == Known.DONE ? null : (Boolean) false;
  }

  /**
   * True when a session of it, as done or as planned, states that it follows another on purpose.
   */
  boolean backToBack() {
    return sessions.stream().anyMatch(session -> meant(session.written))
        || plan != null && plan.sessions().stream().anyMatch(Day::meant);
  }

  private static boolean meant(peakproof.document.@Nullable Session written) {
    return written != null && ("back-to-back".equals(written.purpose()) || meant(written.then()));
  }

  boolean missed() {
    return log != null && log.missed() != null;
  }

  boolean ill() {
    return log != null && log.ill() != null;
  }
}
