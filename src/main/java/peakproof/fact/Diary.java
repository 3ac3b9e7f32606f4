package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Days in a row, each found by its date at once. */
final class Diary {
  private final LocalDate first;
  private final long firstDay;
  private final List<Day> days;
  private final List<Session> sessions;
  private final int[] knownBefore;

  /**
   * Takes the days.
   *
   * @param first the date of the first of them; none follows when there are none
   */
  Diary(LocalDate first, List<Day> days) {
    this.first = first;
    this.firstDay = first.toEpochDay();
    this.days = List.copyOf(days);
    this.sessions = days.stream().flatMap(day -> day.sessions().stream()).toList();
    this.knownBefore = new int[days.size() + 1];
    for (int i = 0; i < days.size(); i++) {
      knownBefore[i + 1] = knownBefore[i] + (days.get(i).isKnown() ? 1 : 0);
    }
  }

  LocalDate first() {
    return first;
  }

  List<Day> days() {
    return days;
  }

  /** The sessions of all days. */
  List<Session> sessions() {
    return sessions;
  }

  /** The day of a date; null before the first and after the last. */
  @Nullable Day at(LocalDate date) {
    long index = date.toEpochDay() - firstDay;
    return index < 0 || index >= days.size() ? null : days.get((int) index);
  }

  /** The days there are of a span, both ends in. */
  List<Day> between(LocalDate from, LocalDate to) {
    int begin = before(from);
    return days.subList(begin, Math.max(begin, until(to)));
  }

  /** How many days of a span are known, both ends in. */
  int known(LocalDate from, LocalDate to) {
    return Math.max(0, knownBefore[until(to)] - knownBefore[before(from)]);
  }

  /** How many days there are until a date, that one among them. */
  int until(LocalDate date) {
    return within(date.toEpochDay() - firstDay + 1);
  }

  private int before(LocalDate date) {
    return within(date.toEpochDay() - firstDay);
  }

  private int within(long count) {
    return (int) Math.max(0, Math.min(days.size(), count));
  }
}
