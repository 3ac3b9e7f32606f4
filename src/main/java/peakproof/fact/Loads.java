package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.measure.SessionLoad;
import peakproof.measure.SetBreakdown;

/**
 * Session-RPE load day by day, one unit across the as-of date: what is done by its own rating, what
 * is planned by its expected rating times what this athlete's sessions have come to weigh.
 */
final class Loads {
  private final Timeline timeline;
  private final Memo<peakproof.document.Session, Double> planned = new Memo<>(this::plannedOf);
  private final double scale;
  private final List<@Nullable Double> daily = new ArrayList<>();

  Loads(Timeline timeline, List<Followed.Pair> followed) {
    this.timeline = timeline;
    List<SessionLoad.Pair> pairs = new ArrayList<>();
    for (Followed.Pair pair : followed) {
      Double planned = this.planned.of(pair.written());
      Double logged = SessionLoad.logged(pair.done().written);
      if (planned != null && logged != null) {
        pairs.add(new SessionLoad.Pair(planned, logged));
      }
    }
    this.scale = SessionLoad.scale(pairs, timeline.constants());
    timeline.days().forEach(day -> daily.add(of(day, null)));
  }

  private @Nullable Double plannedOf(peakproof.document.Session session) {
    SetBreakdown breakdown = timeline.breakdown(session);
    return breakdown == null
        ? null
        : SessionLoad.planned(breakdown, session.strength(), timeline.constants());
  }

  /** What planned loads are multiplied by; 1 until enough sessions were done as planned. */
  double scale() {
    return scale;
  }

  /** Load of a session, arbitrary units; null when its time or rating is unknown. */
  @Nullable Double of(Session session) {
    if (!session.planned()) {
      return SessionLoad.logged(session.written);
    }
    Double unscaled = planned.of(session.written);
    return unscaled == null ? null : (Double) (scale * unscaled);
  }

  /** Load of a day, null when the day or one of its sessions is unknown. */
  @Nullable Double of(Day day) {
    return day.isKnown() ? daily.get(timeline.diary().until(day.date()) - 1) : null;
  }

  /** The days of a week, of one sport or of all. */
  List<@Nullable Double> of(Week week, @Nullable Sport sport) {
    List<@Nullable Double> loads = new ArrayList<>();
    week.days().forEach(day -> loads.add(sport == null ? of(day) : of(day, sport)));
    return loads;
  }

  /** All of a week, of one sport or of all; null when a day or session is unknown. */
  @Nullable Double sum(Week week, @Nullable Sport sport) {
    double sum = 0;
    for (Double load : of(week, sport)) {
      if (load == null) {
        return null;
      }
      sum += load;
    }
    return sum;
  }

  /** All days from the first entry to a last one, oldest first. */
  List<@Nullable Double> until(LocalDate last) {
    return daily.subList(0, timeline.diary().until(last));
  }

  /** Walks and the like carry no load of training. */
  private @Nullable Double of(Day day, @Nullable Sport sport) {
    if (!day.isKnown()) {
      return null;
    }
    double sum = 0;
    for (Session session : day.sessions()) {
      if (sport == null ? session.training() : session.sport() == sport) {
        Double load = of(session);
        if (load == null) {
          return null;
        }
        sum += load;
      }
    }
    return sum;
  }
}
