package peakproof.begin;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** From when to when a skeleton goes. */
final class PlanTime {
  /** Weeks of a skeleton that is not told when to begin. */
  private static final int USUAL_WEEKS = 8;

  private static final int MOST_WEEKS = 30;

  private PlanTime() {}

  /** The Monday to begin on; eight weeks in all without a word on it. */
  static LocalDate begins(@Nullable String starts, LocalDate race) {
    return starts == null
        ? Frame.monday(race).minusWeeks(USUAL_WEEKS - 1)
        : LocalDate.parse(starts.strip());
  }

  /** Why no weeks can be written, in words; null when they can. */
  static @Nullable String trouble(LocalDate begins, LocalDate race, Set<DayOfWeek> daysOff) {
    LocalDate raceWeek = Frame.monday(race);
    if (!begins.isBefore(raceWeek)) {
      return "'--starts' is "
          + begins
          + " and the race on "
          + race
          + "; expected a Monday before race week; write one up to "
          + raceWeek.minusWeeks(1);
    }
    if (begins.isBefore(raceWeek.minusWeeks(MOST_WEEKS))) {
      return "'--starts' is more than "
          + MOST_WEEKS
          + " weeks before the race; expected the last weeks; write one from "
          + raceWeek.minusWeeks(MOST_WEEKS);
    }
    return daysOff.size() > Slots.MOST_DAYS_OFF
        ? "'--days-off' names "
            + daysOff.size()
            + " days; expected at most "
            + Slots.MOST_DAYS_OFF
            + ", or hard days would meet; take one out and move sessions by hand"
        : null;
  }
}
