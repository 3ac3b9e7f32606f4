package peakproof.fact;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.document.PlanDay;
import peakproof.document.PlanWeek;

/**
 * A medicine the plan puts beside a session to come or the race.
 *
 * @param kind prescribed, painkiller or anti-inflammatory
 * @param occasion what it is planned for, in words
 */
@OfHealth
public record PlannedMedicine(String kind, String occasion, Where entry) implements Fact {
  /** True when a doctor prescribed it. */
  public boolean prescribed() {
    return kind.equals("prescribed");
  }

  static List<PlannedMedicine> all(Plan plan, Timeline timeline) {
    List<PlannedMedicine> planned = new ArrayList<>();
    timeline
        .sessions()
        .filter(Session::planned)
        .forEach(session -> add(session.written, session.label(), session.date(), planned));
    raceEntries(timeline).forEach(race -> add(race, "the race", timeline.raceDate(), planned));
    Plan.RaceDay day = plan.raceDay();
    if (day != null) {
      for (String kind : day.medicines().stream().sorted().toList()) {
        Where entry = new Where(day.at() + "/medicines", timeline.raceDate(), null);
        planned.add(new PlannedMedicine(kind, "the race", entry));
      }
    }
    return planned;
  }

  private static void add(
      peakproof.document.Session written,
      String occasion,
      LocalDate date,
      List<PlannedMedicine> planned) {
    if (written.medicine() != null) {
      Where entry = new Where(written.at(), date, null);
      planned.add(new PlannedMedicine(written.medicine(), occasion, entry));
    }
  }

  /** What the plan writes on the day of the race, which is no day of training. */
  private static List<peakproof.document.Session> raceEntries(Timeline timeline) {
    LocalDate race = timeline.raceDate();
    PlanWeek week = timeline.writtenWeek(Week.monday(race));
    DayOfWeek weekday = race.getDayOfWeek();
    PlanDay day = week == null ? null : week.days().get(weekday);
    return day == null ? List.of() : day.sessions();
  }

  /** The day it is planned for. */
  public @Nullable LocalDate date() {
    return entry.date();
  }

  @Override
  public List<Where> where() {
    return List.of(entry);
  }
}
