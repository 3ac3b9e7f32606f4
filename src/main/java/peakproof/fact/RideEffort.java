package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.measure.HeldEffort;

/**
 * What a ride is held at: one still to come by its targets, or one of the last two weeks by its
 * means while a long ride is still to come. Tests and races are left out.
 *
 * @param ride the ride
 * @param powerMinutes minutes of it held by power
 * @param powerShare their mean as a share of critical power; unknown without any
 * @param heartMinutes minutes of it held by heart rate
 * @param heartShare their mean as a share of the measured maximum; unknown without any, and where a
 *     medicine sets the heart rate
 * @param open true when some of it is held at what cannot be told of this athlete
 * @param entries the ride to change first, then the ride itself
 */
public record RideEffort(
    Ride ride,
    double powerMinutes,
    @Nullable Double powerShare,
    double heartMinutes,
    @Nullable Double heartShare,
    boolean open,
    List<Where> entries)
    implements Fact {
  private static final int DAYS_BACK = 14;

  /** The ride in words. */
  public String label() {
    return ride.label() + (ride.planned() ? " on " : ", done on ") + Words.weekday(ride.date());
  }

  /** Its mean in words. */
  public String held() {
    List<String> held = new ArrayList<>();
    if (powerShare != null) {
      held.add(Words.share(powerShare) + " of critical power over " + Words.minutes(powerMinutes));
    }
    if (heartShare != null) {
      held.add(
          Words.share(heartShare)
              + " of the highest heart rate over "
              + Words.minutes(heartMinutes));
    }
    return String.join(" and ", held);
  }

  static List<RideEffort> all(Timeline timeline) {
    List<RideEffort> all = new ArrayList<>();
    LocalDate from = timeline.asOf().minusDays(DAYS_BACK);
    List<Ride> rides =
        timeline
            .sessions()
            .filter(Ride.class::isInstance)
            .map(Ride.class::cast)
            .filter(ride -> ride.written.race() == null && !ride.test())
            .toList();
    Ride next = rides.stream().filter(r -> r.planned() && r.longRide()).findFirst().orElse(null);
    for (Ride ride : rides) {
      Double minutes = ride.minutes();
      if (ride.planned() && ride.written.set() != null) {
        HeldEffort held =
            HeldEffort.planned(ride.written.set(), timeline.calibration(), timeline.constants());
        all.add(of(ride, held, ride.where()));
      } else if (next != null && minutes != null && ride.date().isAfter(from)) {
        HeldEffort held = HeldEffort.logged(ride.written, minutes, timeline.calibration());
        List<Where> entries = new ArrayList<>(next.where());
        entries.addAll(ride.where());
        all.add(of(ride, held, List.copyOf(entries)));
      }
    }
    return all;
  }

  private static RideEffort of(Ride ride, HeldEffort held, List<Where> entries) {
    return new RideEffort(
        ride,
        Exact.of(held.powerMinutes()),
        Exact.of(held.powerShare()),
        Exact.of(held.heartMinutes()),
        Exact.of(held.heartShare()),
        held.open(),
        entries);
  }

  @Override
  public List<Where> where() {
    return entries;
  }
}
