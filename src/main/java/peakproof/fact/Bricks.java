package peakproof.fact;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.measure.Constant;

/** Which runs come straight off which rides. */
final class Bricks {
  private final Plan plan;
  private final Timeline timeline;
  private final Memo<Run, Ride> rides = new Memo<>(this::straightBefore);
  private final List<Brick> all = new ArrayList<>();

  Bricks(Plan plan, Timeline timeline) {
    this.plan = plan;
    this.timeline = timeline;
    timeline.sessions().forEach(this::add);
  }

  private void add(Session session) {
    Ride ride = session instanceof Run run ? ride(run) : null;
    if (ride != null) {
      all.add(brick(ride, (Run) session));
    }
  }

  private Brick brick(Ride ride, Run run) {
    Double goal = plan.goal() == null ? null : plan.goal().bike();
    Double leg = plan.event().legs().run();
    Double minutes = ride.minutes();
    Double metres = run.metres();
    return new Brick(
        ride,
        run,
        goal == null || minutes == null ? null : (Double) (minutes * 60 / goal),
        leg == null || metres == null ? null : (Double) (metres / leg));
  }

  /** All of them by date. */
  List<Brick> all() {
    return all;
  }

  /** The ride that a run follows without a break, or within minutes by the clock; null without. */
  @Nullable Ride ride(Run run) {
    return rides.of(run);
  }

  private @Nullable Ride straightBefore(Run run) {
    return run.before instanceof Ride straight ? straight : justBefore(run);
  }

  private @Nullable Ride justBefore(Run run) {
    Day day = timeline.at(run.date());
    if (day == null || run.written.time() == null || run.before != null) {
      return null;
    }
    for (Session session : day.sessions()) {
      Double minutes = session.minutes();
      if (session instanceof Ride ride && ride.written.time() != null && minutes != null) {
        double gap =
            ChronoUnit.SECONDS.between(ride.written.time(), run.written.time()) / 60.0 - minutes;
        if (gap >= 0 && gap <= timeline.constant(Constant.BRICK_WITHIN)) {
          return ride;
        }
      }
    }
    return null;
  }

  /** Minutes of the longest ride on the run's day or the day before, but the one it follows. */
  double longestRideWithinDay(Run run) {
    Ride straightBefore = ride(run);
    double longest = 0;
    for (Day day : timeline.between(run.date().minusDays(1), run.date())) {
      for (Session session : day.sessions()) {
        Double minutes = session.minutes();
        if (session instanceof Ride ride
            && ride != straightBefore
            && minutes != null
            && isBefore(ride, run, day)) {
          longest = Math.max(longest, minutes);
        }
      }
    }
    return longest;
  }

  /** By the clock where both say when, else in the order they are written. */
  private static boolean isBefore(Ride ride, Run run, Day day) {
    if (!ride.date().equals(run.date())) {
      return true;
    }
    if (ride.written.time() != null && run.written.time() != null) {
      return ride.written.time().isBefore(run.written.time());
    }
    return day.sessions().indexOf(ride) < day.sessions().indexOf(run);
  }
}
