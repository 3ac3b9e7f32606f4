package peakproof.fact;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.measure.TaperReduction;

/**
 * A block day by day as a reader sees it beside what was judged: done, planned, or not known.
 *
 * @param weeks from the first entry to race week
 * @param usualMinutes training of a day in the weeks before the taper that were not lighter; null
 *     without a taper or enough of them
 */
public record Sheet(List<Column> weeks, @Nullable Double usualMinutes) {
  /** A block of which nothing is known. */
  public static final Sheet EMPTY = new Sheet(List.of(), null);

  /**
   * A week, race day left out.
   *
   * @param phase null without a block and a focus
   * @param done true when all of it is past and known
   * @param minutes of training by sport, unknown where a day or session is
   * @param load session-RPE load, arbitrary units; unknown likewise
   */
  public record Column(
      LocalDate starts,
      @Nullable Phase phase,
      boolean done,
      List<Cell> days,
      Map<Sport, @Nullable Double> minutes,
      @Nullable Double all,
      @Nullable Double load) {
    /** Minutes of training a day of the week; unknown where a day or session is. */
    public @Nullable Double minutesADay() {
      return all == null || days.isEmpty() ? null : (Double) (all / days.size());
    }
  }

  /** Where a day's training is known from. */
  public enum Source {
    /** The log. */
    DONE,
    /** The plan. */
    PLANNED,
    /** Past, and the log does not tell. */
    UNKNOWN,
    /** To come, in a week that is not written. */
    UNWRITTEN
  }

  /**
   * A day.
   *
   * @param missed true when sessions were missed
   * @param ill true with an illness entry
   * @param hard with a hard session, a long run or a long ride
   */
  public record Cell(
      LocalDate date,
      Source source,
      boolean missed,
      boolean ill,
      boolean hard,
      List<Entry> entries) {}

  /**
   * A session.
   *
   * @param minutes unknown when neither written nor computable
   * @param follows straight off the one before it
   * @param race a race on the way
   * @param label its set line, duration or distance as written
   */
  public record Entry(
      Sport sport, @Nullable Double minutes, boolean follows, boolean race, String label) {}

  static Sheet of(Timeline timeline) {
    List<Week> weeks = timeline.weeks().all();
    return new Sheet(weeks.stream().map(Sheet::column).toList(), usual(weeks, timeline));
  }

  private static @Nullable Double usual(List<Week> weeks, Timeline timeline) {
    for (Week week : weeks) {
      if (week.phase() == Phase.TAPER) {
        TaperReduction cut = timeline.weeks().taperReduction(week.days(), week);
        return Exact.of(cut.referenceDay());
      }
    }
    return null;
  }

  private static Column column(Week week) {
    Map<Sport, @Nullable Double> minutes = new EnumMap<>(Sport.class);
    for (Sport sport : Sport.values()) {
      minutes.put(sport, week.known() ? minutes(week, session -> session.sport() == sport) : null);
    }
    return new Column(
        week.starts(),
        week.phase(),
        week.days().stream().allMatch(day -> day.known() == Known.DONE),
        week.days().stream().map(Sheet::cell).toList(),
        minutes,
        week.minutes(),
        Exact.of(week.load()));
  }

  private static @Nullable Double minutes(Week week, Predicate<Session> which) {
    double sum = 0;
    for (Session session : week.sessions().filter(which).toList()) {
      Double minutes = session.minutes();
      if (minutes == null) {
        return null;
      }
      sum += minutes;
    }
    return Exact.of(sum);
  }

  private static Cell cell(Day day) {
    Source source =
        switch (day.known()) {
          case DONE -> Source.DONE;
          case PLANNED -> Source.PLANNED;
          case UNKNOWN -> Source.UNKNOWN;
          case UNWRITTEN -> Source.UNWRITTEN;
        };
    return new Cell(
        day.date(),
        source,
        day.missed(),
        day.ill(),
        day.hard(),
        day.sessions().stream().map(Sheet::entry).toList());
  }

  private static Entry entry(Session session) {
    return new Entry(
        session.sport(),
        session.minutes(),
        session.before != null,
        session.written.race() != null,
        session.label());
  }
}
