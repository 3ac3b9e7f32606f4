package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What is planned after an illness: the first hard or long session, and the first week back, which
 * is the seven days from the first training on.
 *
 * @param from the illness's first entry
 * @param firstHardDays days from the illness's last day to the first hard or long session to come;
 *     unknown without one
 * @param firstHard that session in words
 * @param firstWeekMinutes training of the first week back; unknown when it is over, when a day of
 *     it or a session's length is not known, and before any training
 * @param doneMinutes how much of it is done
 * @param usualMinutes the most of the last three weeks before the illness that were neither lighter
 *     nor interrupted; unknown without one
 * @param firstWeekKnown true when both are known, or no first week can be changed
 * @param entries the days to come of the first week and the first hard or long session, that first
 *     when it lies in the week
 */
@OfHealth
public record Comeback(
    LocalDate from,
    @Nullable Double firstHardDays,
    String firstHard,
    @Nullable Double firstWeekMinutes,
    double doneMinutes,
    @Nullable Double usualMinutes,
    boolean firstWeekKnown,
    List<Where> entries)
    implements Fact {
  private static final int WEEK = 7;
  private static final int WEEKS_BEFORE = 3;

  /** One for each illness after which training can still be changed. */
  static List<Comeback> all(Timeline timeline, List<Illness> illnesses) {
    return illnesses.stream()
        .map(illness -> of(timeline, illness))
        .filter(comeback -> !comeback.entries().isEmpty())
        .toList();
  }

  private static Comeback of(Timeline timeline, Illness illness) {
    Session hard =
        timeline
            .sessions()
            .filter(session -> session.planned() && session.hardOrLong())
            .filter(session -> !session.date().isBefore(illness.from()))
            .findFirst()
            .orElse(null);
    List<Day> week = firstWeek(timeline, illness.last());
    boolean open = week.stream().anyMatch(Day::changeable);
    List<Where> entries = new ArrayList<>();
    week.stream()
        .filter(day -> day.changeable() && !day.sessions().isEmpty())
        .forEach(day -> entries.add(timeline.whereOf(day)));
    if (hard != null) {
      boolean inWeek = week.stream().anyMatch(day -> day.date().equals(hard.date()));
      entries.addAll(inWeek ? 0 : entries.size(), hard.where());
    }
    Double minutes = open ? minutes(week) : null;
    Double usual = usual(timeline, illness.from());
    return new Comeback(
        illness.from(),
        hard == null
            ? null
            : (Double) (double) ChronoUnit.DAYS.between(illness.last(), hard.date()),
        hard == null ? "none" : hard.label() + " on " + Words.weekday(hard.date()),
        minutes,
        done(week),
        usual,
        !open || minutes != null && usual != null,
        List.copyOf(entries));
  }

  private static List<Day> firstWeek(Timeline timeline, LocalDate last) {
    return timeline
        .sessions()
        .filter(session -> session.date().isAfter(last) && session.training())
        .findFirst()
        .map(first -> timeline.between(first.date(), first.date().plusDays(WEEK - 1)))
        .orElse(List.of());
  }

  private static @Nullable Double minutes(List<Day> days) {
    double sum = 0;
    for (Day day : days) {
      Double minutes = day.isKnown() ? day.minutes() : null;
      if (minutes == null) {
        return null;
      }
      sum += minutes;
    }
    return sum;
  }

  private static double done(List<Day> days) {
    return days.stream()
        .filter(day -> day.known() == Known.DONE)
        .map(Day::minutes)
        .filter(Objects::nonNull)
        .mapToDouble(Double::doubleValue)
        .sum();
  }

  private static @Nullable Double usual(Timeline timeline, LocalDate illness) {
    List<Week> before =
        timeline.weeks().all().stream()
            .filter(week -> week.lastDay().isBefore(illness))
            .filter(week -> !week.lighter() && !week.interrupted())
            .toList();
    Double most = null;
    for (Week week : before.subList(Math.max(0, before.size() - WEEKS_BEFORE), before.size())) {
      Double minutes = week.minutes();
      if (minutes != null && minutes > 0) {
        most = most == null ? minutes : (Double) Math.max(most, minutes);
      }
    }
    return most;
  }

  /** What is done of the first week back as a share of the usual one; unknown like that. */
  public @Nullable Double firstWeekDoneShare() {
    return usualMinutes == null ? null : (Double) Exact.of(doneMinutes / usualMinutes);
  }

  /** The first week back as a share of the usual one; unknown when either is. */
  public @Nullable Double firstWeekShare() {
    return firstWeekMinutes == null || usualMinutes == null
        ? null
        : (Double) Exact.of(firstWeekMinutes / usualMinutes);
  }

  @Override
  public List<Where> where() {
    return entries;
  }
}
