package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.measure.DistanceClass;

/**
 * A race before the one the plan leads to, still to come. With a ride and a run it has a distance
 * class; a race of a single sport has none.
 *
 * @param name of the event
 * @param daysToRace days before race day
 * @param full true at full effort; unknown when not said
 * @param distance distance class; unknown without one
 * @param runKm length of a run raced alone; unknown for any other race
 * @param legsKnown true when it says what is raced
 */
public record RaceOnTheWay(
    Where entry,
    String name,
    LocalDate date,
    double daysToRace,
    @Nullable Boolean full,
    @Nullable DistanceClass distance,
    @Nullable Double runKm,
    boolean legsKnown)
    implements Fact {

  static List<RaceOnTheWay> all(Timeline timeline) {
    return timeline
        .sessions()
        .filter(session -> session.planned() && session.written.race() != null)
        .map(session -> of(session, timeline))
        .toList();
  }

  private static RaceOnTheWay of(Session session, Timeline timeline) {
    Event.Legs legs = session.written.legs();
    String effort = session.written.effort();
    return new RaceOnTheWay(
        session.where().get(0),
        String.valueOf(session.written.race()),
        session.date(),
        session.daysToRace(),
        effort == null ? null : (Boolean) effort.equals("full"),
        legs == null || legs.run() == null
            ? null
            : DistanceClass.ofBikeLeg(legs.bike(), timeline.constants()),
        legs == null ? null : runAlone(legs),
        legs != null);
  }

  private static @Nullable Double runAlone(Event.Legs legs) {
    Double metres = legs.run();
    return metres == null || legs.bike() != null || legs.swim() != null
        ? null
        : (Double) (metres / 1000);
  }

  /** True for standard distance. */
  public boolean standard() {
    return distance == DistanceClass.STANDARD;
  }

  /** True for half distance. */
  public boolean half() {
    return distance == DistanceClass.HALF;
  }

  /** True for full distance. */
  public boolean fullDistance() {
    return distance == DistanceClass.FULL;
  }

  /** True when what is raced and how hard is said. */
  boolean settled() {
    return full != null && (legsKnown || !full);
  }

  @Override
  public List<Where> where() {
    return List.of(entry);
  }
}
