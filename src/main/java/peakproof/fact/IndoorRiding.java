package peakproof.fact;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The riding of the peak weeks, done and planned, by place. Weeks that are interrupted or declared
 * without cycling are left out. A ride that does not say where counts as outdoors, unless none
 * says.
 *
 * @param indoorShare share of the riding time on a trainer, in a gym or at home; unknown while a
 *     day or a length is, or no ride says where
 * @param written true when all peak weeks are written
 * @param warned true when the plan declares a warning for one of their days
 */
public record IndoorRiding(
    Where entry, @Nullable Double indoorShare, boolean written, boolean warned) implements Fact {
  private static final Set<String> INDOORS = Set.of("trainer", "gym", "home");

  /** Null when no peak week with a ride can be changed. */
  static @Nullable IndoorRiding of(Timeline timeline) {
    List<Week> weeks =
        timeline.weeks().all().stream()
            .filter(week -> week.phase() == Phase.PEAK)
            .filter(week -> !week.interrupted() && !week.withoutBike())
            .toList();
    List<Day> days = weeks.stream().flatMap(week -> week.days().stream()).toList();
    List<Session> rides =
        weeks.stream().flatMap(Week::sessions).filter(Ride.class::isInstance).toList();
    Session first = rides.stream().filter(Session::planned).findFirst().orElse(null);
    return first == null
        ? null
        : new IndoorRiding(
            new Where(first.where().get(0).pointer(), null, first.week()),
            days.stream().anyMatch(day -> day.known() == Known.UNKNOWN) ? null : share(rides),
            days.stream().noneMatch(day -> day.known() == Known.UNWRITTEN),
            days.stream().anyMatch(IndoorRiding::warned));
  }

  private static boolean warned(Day day) {
    return day.plan() != null && !day.plan().warnings().isEmpty();
  }

  private static @Nullable Double share(List<Session> rides) {
    boolean said = rides.stream().anyMatch(ride -> ride.written.scene().where() != null);
    if (!said || rides.stream().anyMatch(ride -> ride.minutes() == null)) {
      return null;
    }
    double all = minutes(rides);
    return all <= 0
        ? null
        : (Double) Exact.of(minutes(rides.stream().filter(IndoorRiding::indoors).toList()) / all);
  }

  private static boolean indoors(Session ride) {
    String where = ride.written.scene().where();
    return where != null && INDOORS.contains(where);
  }

  private static double minutes(List<Session> rides) {
    return rides.stream().map(Session::minutes).mapToDouble(Objects::requireNonNull).sum();
  }

  @Override
  public List<Where> where() {
    return List.of(entry);
  }
}
