package peakproof.begin;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import peakproof.document.Athlete;
import peakproof.document.Event;
import peakproof.document.Plan;
import peakproof.measure.DistanceClass;

/**
 * What a skeleton is made from: a plan without weeks, and the house's numbers.
 *
 * @param begins the Monday of the first week
 */
record Brief(
    Plan plan, DistanceClass distance, Profile profile, LocalDate begins, HouseNumbers house) {
  /** Pace where there is no goal, seconds per 100 m (common practice, no source). */
  private static final double SWIM_PACE = 130;

  private static final double GROWN = 4 / 3.0;

  Practice practice() {
    return Practice.of(distance);
  }

  Event event() {
    return plan.event();
  }

  LocalDate race() {
    return plan.event().date();
  }

  boolean isOpenWater() {
    return !"pool".equals(event().swim().water());
  }

  /** True when the race lets the wetsuit be worn whatever the water's temperature. */
  boolean isWetsuitSure() {
    String rule = event().swim().wetsuit();
    return "allowed".equals(rule) || "required".equals(rule);
  }

  /** Unless it is forbidden it may come to be worn, and has to be rehearsed. */
  boolean mayWearWetsuit() {
    return isOpenWater() && !"forbidden".equals(event().swim().wetsuit());
  }

  boolean isLong() {
    return distance == DistanceClass.FULL || distance == DistanceClass.HALF;
  }

  /** Minutes of the longest ride of the last weeks. */
  double latelyRide() {
    return Objects.requireNonNull(lately().longestRideSeconds()) / 60;
  }

  /** Minutes of the longest run of the last weeks. */
  double latelyRun() {
    return Objects.requireNonNull(lately().longestRunSeconds()) / 60;
  }

  /** Minutes a week of the last weeks. */
  double latelyWeek() {
    return Objects.requireNonNull(lately().weekSeconds()) / 60;
  }

  /** Metres swum lately without a rest; without a word on it half of what the house wants. */
  double latelySwim() {
    Double metres = lately().longestSwimMetres();
    return metres == null ? longestSwim() / 2.0 : metres;
  }

  private Athlete.Lately lately() {
    return Objects.requireNonNull(plan.athlete().lately());
  }

  /** Minutes the longest week may take. */
  double mostWeek() {
    Athlete.Available available = plan.athlete().available();
    Double seconds = available == null ? null : available.weekSeconds();
    return seconds == null ? latelyWeek() * GROWN : seconds / 60;
  }

  /** Minutes the longest session of a weekday may take. */
  double mostWeekday() {
    Athlete.Available available = plan.athlete().available();
    Double seconds = available == null ? null : available.weekdaySeconds();
    return seconds == null ? Double.MAX_VALUE : seconds / 60;
  }

  Set<DayOfWeek> daysOff() {
    Athlete.Available available = plan.athlete().available();
    Set<DayOfWeek> off = EnumSet.noneOf(DayOfWeek.class);
    off.addAll(available == null ? Set.of() : available.daysOff());
    return off;
  }

  /** Metres to swim without a rest once before the race. */
  int longestSwim() {
    Double leg = event().legs().swim();
    double share = house.of("swim-longest-too-short", "longest", distance);
    return leg == null ? 0 : (int) Math.ceil(leg * share / 100) * 100;
  }

  /** Seconds per 100 m of easy and race swimming together, near enough to size a session. */
  double swimPace() {
    Double leg = event().legs().swim();
    Double goal = plan.goal() == null ? null : plan.goal().swim();
    return leg == null || goal == null ? SWIM_PACE : goal / leg * 100 + 5;
  }

  /** Minutes of one ride the house asks for; 0 without a goal for the bike. */
  double leastRide() {
    Double goal = plan.goal() == null ? null : plan.goal().bike();
    return goal == null ? 0 : goal / 60 * house.of("bike-longest-too-short", "longest", distance);
  }

  /** Minutes of the longest ride to come to. */
  double longestRide() {
    double wanted = practice().longRide() * (isLong() ? profile.reach : 1);
    return fives(Math.max(leastRide() + 10, wanted));
  }

  /** Minutes of one run the house asks for; it asks for none before a sprint. */
  double leastRun() {
    return distance == DistanceClass.SPRINT
        ? 0
        : house.of("run-longest-too-short", "long", distance);
  }

  /** Minutes of the longest run to come to. */
  double longestRun() {
    double wanted = practice().longRun() * profile.reach;
    double run = fives(Math.max(wanted, leastRun()));
    return isLong() ? Math.min(run, house.of("run-longest-too-long", "longest", distance)) : run;
  }

  private static double fives(double minutes) {
    return Math.ceil(minutes / 5) * 5;
  }
}
