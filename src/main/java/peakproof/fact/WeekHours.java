package peakproof.fact;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Plan;

/**
 * A week that can still be changed against the time the athlete has.
 *
 * @param minutes training planned and done; unknown when a day or a session's length is
 * @param weekShare the same as a share of the hours the athlete has; unknown without those
 * @param outing the longest session from Monday to Friday still to come, what follows straight
 *     after with it, in words; {@code none} without one
 * @param outingShare its length as a share of the weekday's time; unknown without that
 */
public record WeekHours(
    Week week,
    @Nullable Double minutes,
    @Nullable Double weekShare,
    String outing,
    @Nullable Double outingShare)
    implements Fact {

  /** {@code the week of 14 Jun}. */
  public String label() {
    return week.label();
  }

  /** True for a week declared as a camp. */
  public boolean camp() {
    return week.camp();
  }

  /** True with travel, illness or work declared, illness logged, or several days missed. */
  public boolean interrupted() {
    return week.interrupted();
  }

  static List<WeekHours> all(Timeline timeline, Plan plan) {
    Athlete.Available available = plan.athlete().available();
    List<WeekHours> all = new ArrayList<>();
    if (available != null) {
      timeline.weeks().all().stream()
          .filter(Week::changeable)
          .forEach(week -> all.add(of(week, available)));
    }
    return all;
  }

  private static WeekHours of(Week week, Athlete.Available available) {
    String outing = "none";
    double longest = 0;
    for (Day day : week.days()) {
      for (Session session : day.sessions()) {
        double minutes = outingMinutes(session, day);
        if (day.changeable() && weekday(day) && minutes > longest) {
          longest = minutes;
          outing = session.label() + " on " + Words.weekday(day.date()) + ", " + words(minutes);
        }
      }
    }
    return new WeekHours(
        week,
        week.minutes(),
        share(week.minutes(), available.weekSeconds()),
        outing,
        share(longest, available.weekdaySeconds()));
  }

  private static String words(double minutes) {
    return Words.minutes(minutes) + " in all";
  }

  private static boolean weekday(Day day) {
    DayOfWeek weekday = day.date().getDayOfWeek();
    return weekday != DayOfWeek.SATURDAY && weekday != DayOfWeek.SUNDAY;
  }

  /** Nothing for what follows straight after another session, which counts with that one. */
  private static double outingMinutes(Session first, Day day) {
    if (first.before != null) {
      return 0;
    }
    double sum = 0;
    for (Session session : day.sessions()) {
      Session root = session;
      while (root.before != null) {
        root = root.before;
      }
      Double minutes = session.minutes();
      sum += root == first && minutes != null ? minutes : 0;
    }
    return sum;
  }

  private static @Nullable Double share(@Nullable Double minutes, @Nullable Double seconds) {
    return minutes == null || seconds == null || seconds <= 0
        ? null
        : (Double) Exact.of(minutes * 60 / seconds);
  }

  @Override
  public List<Where> where() {
    return week.where();
  }
}
