package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Weeks in a row in which the longest ride and the longest run, both long by the club's measure,
 * are on adjacent days and nothing states that this is meant; the last of them still to come.
 *
 * @param weeks how many
 * @param from the Monday of the first
 * @param to the Monday of the last
 * @param entries those that can still be changed
 */
public record PileUp(double weeks, LocalDate from, LocalDate to, List<Where> entries)
    implements Fact {

  /** {@code 31 May to 14 Jun}, the Mondays of the first and the last. */
  public String label() {
    return Words.day(from) + " to " + Words.day(to);
  }

  @Override
  public List<Where> where() {
    return entries;
  }

  static List<PileUp> all(Timeline timeline) {
    List<PileUp> all = new ArrayList<>();
    List<Week> row = new ArrayList<>();
    for (Week week : timeline.weeks().all()) {
      if (isOne(week, timeline)) {
        row.add(week);
      } else {
        add(row, all);
        row.clear();
      }
    }
    add(row, all);
    return all;
  }

  private static boolean isOne(Week week, Timeline timeline) {
    Ride ride = longest(week.sessions().filter(Ride.class::isInstance).map(Ride.class::cast));
    Run run = longest(week.sessions().filter(Run.class::isInstance).map(Run.class::cast));
    return ride != null
        && run != null
        && week.known()
        && !week.camp()
        && !week.interrupted()
        && ride.longRide()
        && run.longRun()
        && Math.abs(ChronoUnit.DAYS.between(ride.date(), run.date())) == 1
        && !meant(ride, timeline)
        && !meant(run, timeline);
  }

  private static boolean meant(Session session, Timeline timeline) {
    Day day = timeline.at(session.date());
    return day != null && day.backToBack();
  }

  /** Null without one, and when the length of one is not known. */
  private static <S extends Session> @Nullable S longest(Stream<S> sessions) {
    List<S> all = sessions.toList();
    Optional<S> longest =
        all.stream().anyMatch(session -> session.minutes() == null)
            ? Optional.empty()
            : all.stream().max(Comparator.comparingDouble(PileUp::minutes));
    return longest.orElse(null);
  }

  private static double minutes(Session session) {
    Double minutes = session.minutes();
    return minutes == null ? 0 : minutes;
  }

  private static void add(List<Week> row, List<PileUp> into) {
    List<Where> open = new ArrayList<>();
    row.stream().filter(Week::changeable).forEach(week -> open.addAll(week.where()));
    if (!open.isEmpty()) {
      into.add(
          new PileUp(
              row.size(),
              row.get(0).starts(),
              row.get(row.size() - 1).starts(),
              List.copyOf(open)));
    }
  }
}
