package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.measure.Coverage;

/** The days that one or more windows look at, both ends in, and their sessions by sport. */
final class Span {
  final Timeline timeline;
  final LocalDate first;
  final LocalDate last;
  final List<Day> days;
  final List<Session> sessions = new ArrayList<>();
  final List<Swim> swims = new ArrayList<>();
  final List<Ride> rides = new ArrayList<>();
  final List<Ride> longRides = new ArrayList<>();
  final List<Run> runs = new ArrayList<>();
  private final List<String> notWritten;

  Span(Timeline timeline, LocalDate first, LocalDate last) {
    this.timeline = timeline;
    this.first = first;
    this.last = last;
    this.days = timeline.between(first, last);
    this.notWritten = weeksNotWritten();
    days.forEach(day -> day.sessions().forEach(this::sort));
  }

  private void sort(Session session) {
    sessions.add(session);
    if (session instanceof Swim swim) {
      swims.add(swim);
    } else if (session instanceof Run run) {
      runs.add(run);
    } else if (session instanceof Ride ride) {
      rides.add(ride);
      if (ride.longRide()) {
        longRides.add(ride);
      }
    }
  }

  private List<String> weeksNotWritten() {
    Set<String> missing = new LinkedHashSet<>();
    for (Day day : days) {
      if (day.known() == Known.UNWRITTEN) {
        missing.add(Timeline.notWritten(Week.monday(day.date())));
      }
    }
    return List.copyOf(missing);
  }

  /** The weeks of it that are not written yet, in words. */
  List<String> notWritten() {
    return notWritten;
  }

  /** The runs straight off the bike. */
  List<Brick> bricks() {
    return timeline.bricks().all().stream().filter(brick -> holds(brick.date())).toList();
  }

  boolean holds(LocalDate date) {
    return !date.isBefore(first) && !date.isAfter(last);
  }

  /** True when what the coach states of the last weeks may stand in for a log of its days. */
  boolean statesLately() {
    return timeline.hasLately() && first.isBefore(timeline.asOf());
  }

  /** True when nothing at all is known of its days that are over. */
  boolean unlogged() {
    List<Day> past = days.stream().filter(day -> day.date().isBefore(timeline.asOf())).toList();
    return !past.isEmpty() && past.stream().allMatch(day -> day.known() == Known.UNKNOWN);
  }

  /** True with a day of which nothing is known. */
  boolean hasUnknown() {
    return unknown() > 0;
  }

  /** True when too few of its days are known to call anything absent. */
  boolean thin() {
    Coverage coverage = new Coverage(days.size() - unknown(), days.size());
    return !days.isEmpty() && !coverage.enough(timeline.constants());
  }

  private int unknown() {
    return (int) days.stream().filter(day -> day.known() == Known.UNKNOWN).count();
  }

  /** The entry that is missing while nothing at all is known of some of its days. */
  String logOfAllDays() {
    return "a log of all days since " + Words.day(first);
  }

  /** The day since which the log lags behind; null when it does not. */
  @Nullable LocalDate unloggedSince() {
    return timeline.unloggedSince(first, last);
  }
}
