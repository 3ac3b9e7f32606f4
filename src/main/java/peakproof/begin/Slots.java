package peakproof.begin;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static java.time.DayOfWeek.WEDNESDAY;

import java.time.DayOfWeek;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which day of a week is for what: long ride, long run and the hard ride with an easier day
 * between, one day of rest (common practice, no source).
 */
final class Slots {
  /** How many days a week can be without, so that hard days do not meet. */
  static final int MOST_DAYS_OFF = 2;

  /** What a day is for, in the order in which days are given away. */
  enum Role {
    LONG_RIDE,
    LONG_RUN,
    HARD_RIDE,
    LONG_SWIM,
    POOL,
    EASY
  }

  private Slots() {}

  /**
   * The roles by day. A role without a day is left out.
   *
   * @param weekendRun true when no weekday has room for the long run
   */
  static Map<DayOfWeek, Role> of(Set<DayOfWeek> daysOff, boolean weekendRun) {
    Set<DayOfWeek> free = EnumSet.complementOf(EnumSet.copyOf(withRest(daysOff)));
    Map<DayOfWeek, Role> roles = new EnumMap<>(DayOfWeek.class);
    for (Role role : Role.values()) {
      boolean atWeekend = role == Role.LONG_RUN && weekendRun;
      List<DayOfWeek> order = atWeekend ? List.of(SUNDAY, SATURDAY, FRIDAY) : preferred(role);
      order.stream()
          .filter(free::contains)
          .findFirst()
          .ifPresent(
              day -> {
                free.remove(day);
                roles.put(day, role);
              });
    }
    return roles;
  }

  private static List<DayOfWeek> preferred(Role role) {
    return switch (role) {
      case LONG_RIDE -> List.of(SATURDAY, SUNDAY, FRIDAY, THURSDAY, WEDNESDAY, TUESDAY, MONDAY);
      case LONG_RUN -> List.of(THURSDAY, WEDNESDAY, TUESDAY, MONDAY, FRIDAY, SUNDAY, SATURDAY);
      case HARD_RIDE -> List.of(TUESDAY, MONDAY, WEDNESDAY, THURSDAY, FRIDAY, SUNDAY, SATURDAY);
      case LONG_SWIM -> List.of(WEDNESDAY, FRIDAY, MONDAY, SUNDAY, TUESDAY, THURSDAY, SATURDAY);
      case POOL -> List.of(MONDAY, FRIDAY, WEDNESDAY, SUNDAY, TUESDAY, THURSDAY, SATURDAY);
      case EASY -> List.of(SUNDAY, FRIDAY, MONDAY, WEDNESDAY, THURSDAY, TUESDAY, SATURDAY);
    };
  }

  private static Set<DayOfWeek> withRest(Set<DayOfWeek> daysOff) {
    return daysOff.isEmpty() ? EnumSet.of(FRIDAY) : daysOff;
  }

  static boolean isWeekend(DayOfWeek day) {
    return day == SATURDAY || day == SUNDAY;
  }
}
