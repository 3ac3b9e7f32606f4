package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;

/**
 * Days in a row of peak weeks without one of the three sports, the last ones still to come. A week
 * away or ill, one declared without the sport, a race, and a day nobody wrote down end them.
 *
 * @param sport swim, bike or run
 * @param days how many are certain
 * @param mostDays how many with the days before them of which nobody knows
 * @param from the first certain one
 * @param to the last of them
 * @param hurt true when pain was logged in them
 * @param shortGap true when a short break that is over, without pain or injury, lies in them
 * @param entry the first of them that can still be changed
 */
public record Absence(
    String sport,
    double days,
    double mostDays,
    LocalDate from,
    LocalDate to,
    boolean hurt,
    boolean shortGap,
    Where entry)
    implements Fact {

  /** {@code Mon 31 May to Sun 13 Jun}. */
  public String label() {
    return Words.weekday(from) + " to " + Words.weekday(to);
  }

  @Override
  public List<Where> where() {
    return List.of(entry);
  }

  /** True when so many days are not known to be without it, but may be. */
  boolean mayReach(double least) {
    return days < mostDays && mostDays >= least;
  }

  /** Of the sports of the race. */
  static List<Absence> all(Timeline timeline, Set<Sport> sports, List<Gap> gaps) {
    List<Absence> all = new ArrayList<>();
    for (Sport sport : sports) {
      List<Day> without = new ArrayList<>();
      int most = 0;
      for (Day day : timeline.days()) {
        boolean asked = asked(timeline, day, sport);
        if (asked && day.isKnown() && day.sessions().stream().noneMatch(s -> trains(s, sport))) {
          without.add(day);
          most++;
        } else {
          add(timeline, sport, without, most, gaps, all);
          without.clear();
          most = asked && day.known() == Known.UNKNOWN ? most + 1 : 0;
        }
      }
      add(timeline, sport, without, most, gaps, all);
    }
    return all;
  }

  private static boolean asked(Timeline timeline, Day day, Sport sport) {
    Week week = timeline.weeks().of(day.date());
    return week != null
        && week.phase() == Phase.PEAK
        && !week.interrupted()
        && !week.without(sport);
  }

  /** A race on the way may hold any of the sports. */
  private static boolean trains(Session session, Sport sport) {
    return session.sport() == sport || session.written.race() != null;
  }

  private static void add(
      Timeline timeline,
      Sport sport,
      List<Day> without,
      int most,
      List<Gap> gaps,
      List<Absence> into) {
    Day first = firstChangeable(without);
    if (first == null) {
      return;
    }
    LocalDate from = without.get(0).date();
    LocalDate to = without.get(without.size() - 1).date();
    into.add(
        new Absence(
            sport.word(),
            without.size(),
            most,
            from,
            to,
            without.stream().anyMatch(day -> day.log() != null && !day.log().pain().isEmpty()),
            gaps.stream()
                .filter(gap -> !gap.to().isBefore(from) && !gap.from().isAfter(to))
                .anyMatch(gap -> gap.isShort(timeline)),
            timeline.whereOf(first)));
  }

  private static @Nullable Day firstChangeable(List<Day> days) {
    return days.stream().filter(Day::changeable).findFirst().orElse(null);
  }
}
