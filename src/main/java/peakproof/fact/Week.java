package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;

/** A week from Monday to Sunday, race day left out. Counts are of what is known. */
public final class Week implements Fact {
  private final LocalDate starts;
  private final @Nullable Phase phase;
  private final List<Day> days;
  private final List<Session> sessions;
  private final String pointer;
  private final Map<String, String> without;
  private final boolean interrupted;
  private final Timeline timeline;
  private final @Nullable Double minutes;
  private final @Nullable Double runKm;
  private final @Nullable Double swimMetres;

  Week(
      Timeline timeline,
      LocalDate starts,
      @Nullable Phase phase,
      List<Day> days,
      String pointer,
      Map<String, String> without,
      boolean interrupted) {
    this.timeline = timeline;
    this.starts = starts;
    this.phase = phase;
    this.days = days;
    this.sessions = days.stream().flatMap(day -> day.sessions().stream()).toList();
    this.pointer = pointer;
    this.without = without;
    this.interrupted = interrupted;
    boolean known = known();
    this.minutes = known ? sum(days.stream().map(Day::minutes)) : null;
    this.runKm = known ? sum(of(Run.class).map(Run::km)) : null;
    this.swimMetres = known ? sum(of(Swim.class).map(Swim::metres)) : null;
  }

  static LocalDate monday(LocalDate date) {
    return date.minusDays(date.getDayOfWeek().getValue() - 1);
  }

  /** Its Monday. */
  public LocalDate starts() {
    return starts;
  }

  /** What the week is for; unknown without a block and a focus. */
  public @Nullable Phase phase() {
    return phase;
  }

  /** True for a week declared as a camp. */
  public boolean camp() {
    return phase == Phase.CAMP;
  }

  /** {@code the week of 14 Jun}. */
  public String label() {
    return "the week of " + Words.day(starts);
  }

  /** Days from its Monday to race day. */
  public double daysToRace() {
    return ChronoUnit.DAYS.between(starts, timeline.raceDate());
  }

  /** True when the coach can still change a day of it. */
  public boolean changeable() {
    return days.stream().anyMatch(Day::changeable);
  }

  /** True when the coach can still change or write a day of it. */
  public boolean open() {
    return days.stream().anyMatch(day -> day.changeable() || day.known() == Known.UNWRITTEN);
  }

  /** True when a day of it is still to be written. */
  boolean partlyUnwritten() {
    return days.stream().anyMatch(day -> day.known() == Known.UNWRITTEN);
  }

  /** True when all of it is still to come. */
  public boolean ahead() {
    return days.stream().allMatch(Day::changeable);
  }

  /** True when every day of it is known, from the log or the plan. */
  public boolean known() {
    return days.stream().allMatch(Day::isKnown);
  }

  /** True with travel, illness or work declared, illness logged, or several days missed. */
  public boolean interrupted() {
    return interrupted;
  }

  /** True for the week that holds race day. */
  public boolean raceWeek() {
    return starts.equals(monday(timeline.raceDate()));
  }

  /** True for a lighter week: said so, or well below the best of the three weeks before. */
  public boolean lighter() {
    return phase == Phase.LIGHTER || timeline.weeks().wellBelow(this);
  }

  /** True when the plan declares a gap in swimming for the week. */
  public boolean withoutSwim() {
    return without.containsKey("swim");
  }

  /** True when the plan declares no open water, or no swimming, for the week. */
  public boolean withoutOpenWater() {
    return withoutSwim() || without.containsKey("open-water");
  }

  /** True when the plan declares a gap in cycling for the week. */
  public boolean withoutBike() {
    return without.containsKey("bike");
  }

  /** True when the plan declares a gap in running for the week. */
  public boolean withoutRun() {
    return without.containsKey("run");
  }

  /** True when the plan declares a gap in strength work for the week. */
  public boolean withoutStrength() {
    return without.containsKey("strength");
  }

  /** True when the plan declares a gap in a sport for the week. */
  boolean without(Sport sport) {
    return without.containsKey(sport.word());
  }

  /** Days from its Sunday to race day. */
  public double lastDaysToRace() {
    return daysToRace() - 6;
  }

  LocalDate lastDay() {
    return starts.plusDays(days.size() - 1L);
  }

  List<Day> days() {
    return days;
  }

  Stream<Session> sessions() {
    return sessions.stream();
  }

  private <T extends Session> Stream<T> of(Class<T> kind) {
    return sessions().filter(kind::isInstance).map(kind::cast);
  }

  /** Swims. */
  public double swims() {
    return of(Swim.class).count();
  }

  /** Swims in open water, with those of a log that never says where: they may have been. */
  public double openWaterSwims() {
    return of(Swim.class)
        .filter(swim -> !Boolean.FALSE.equals(timeline.skills().openWater(swim)))
        .count();
  }

  /** Rides. */
  public double rides() {
    return of(Ride.class).count();
  }

  /** Runs, those off the bike included. */
  public double runs() {
    return of(Run.class).count();
  }

  /** Runs straight after a ride. */
  public double bricks() {
    return of(Run.class).filter(Run::offBike).count();
  }

  /** Strength sessions. */
  public double strengthSessions() {
    return of(Strength.class).count();
  }

  /** Hard swims. */
  public double hardSwims() {
    return of(Swim.class).filter(Session::hard).count();
  }

  /** Hard rides. */
  public double hardRides() {
    return of(Ride.class).filter(Session::hard).count();
  }

  /** Hard runs. */
  public double hardRuns() {
    return of(Run.class).filter(Session::hard).count();
  }

  /** Hard sessions of all sports. */
  public double hardSessions() {
    return sessions().filter(Session::hard).count();
  }

  /** Swims with race effort or harder. */
  public double sharpSwims() {
    return of(Swim.class).filter(Session::sharp).count();
  }

  /** Rides with race effort or harder. */
  public double sharpRides() {
    return of(Ride.class).filter(Session::sharp).count();
  }

  /** Runs with race effort or harder. */
  public double sharpRuns() {
    return of(Run.class).filter(Session::sharp).count();
  }

  /** Rest days. */
  public double restDays() {
    return days.stream().filter(Day::rest).count();
  }

  /** Minutes of training; unknown when a day or a session's length is. */
  public @Nullable Double minutes() {
    return minutes;
  }

  /** Kilometres run; unknown when a day or a run's length is. */
  public @Nullable Double runKm() {
    return runKm;
  }

  /** The longest run as a share of the week's running; unknown like the kilometres. */
  public @Nullable Double longestRunShare() {
    Double all = runKm();
    if (all == null || all <= 0) {
      return null;
    }
    double longest =
        of(Run.class).map(Run::km).mapToDouble(Objects::requireNonNull).max().orElse(0);
    return Exact.of(longest / all);
  }

  /**
   * Change of minutes against the best of the three weeks before that were not lighter; a share.
   */
  public @Nullable Double minutesChange() {
    return Exact.of(timeline.weeks().minutesChange(this).change().change());
  }

  boolean minutesChangeKnown() {
    return timeline.weeks().minutesChange(this).change().known();
  }

  /** What the change of minutes is held against, in words. */
  public String minutesBefore() {
    Weeks.Comparison before = timeline.weeks().minutesChange(this);
    Double best = before.change().best();
    return best == null
        ? "the weeks before"
        : before.stated()
            ? "the " + Words.minutes(best) + " a week the coach states"
            : "the best of the last three weeks that were not lighter ("
                + Words.minutes(best)
                + ")";
  }

  /** Change of run distance against the best of the three weeks before; a share. */
  public @Nullable Double runKmChange() {
    return Exact.of(timeline.weeks().runKmChange(this).change());
  }

  /** Metres swum; unknown when a day or a swim's length is. */
  public @Nullable Double swimMetres() {
    return swimMetres;
  }

  /** Change of swim distance against the best of the three weeks before; a share. */
  public @Nullable Double swimMetresChange() {
    return Exact.of(timeline.weeks().swimMetresChange(this).change());
  }

  boolean swimMetresChangeKnown() {
    return timeline.weeks().swimMetresChange(this).known();
  }

  /** Share of the week's swimming that its set lines ask for with paddles; unknown like that. */
  public @Nullable Double paddlesShare() {
    Double all = swimMetres();
    Double paddles = known() ? sum(of(Swim.class).map(Swim::paddlesMetres)) : null;
    return all == null || all <= 0 || paddles == null ? null : (Double) Exact.of(paddles / all);
  }

  /** How much more swimming than before that is and how much of it with paddles, in words. */
  public String swimJump() {
    Double change = swimMetresChange();
    Double paddles = paddlesShare();
    String before =
        change == null
            ? "which nobody can hold against the weeks before"
            : Words.share(Math.abs(change))
                + (change < 0 ? " less" : " more")
                + " than the best of the three weeks before";
    return before
        + (paddles == null
            ? ", an unknown share of it with paddles"
            : ", " + Words.share(paddles) + " of it with paddles");
  }

  /** Session-RPE load; unknown when a day's is. */
  @Nullable Double load() {
    return timeline.loads().sum(this, null);
  }

  /**
   * Its load or its time as a share of the median of the last four weeks before it that were not
   * lighter, whichever share is less; unknown when either is.
   */
  public @Nullable Double usualShare() {
    Double load = share(load(), timeline.weeks().usual(this, Week::load));
    Double time = share(minutes(), timeline.weeks().usual(this, Week::minutes));
    return load == null || time == null ? null : (Double) Exact.of(Math.min(load, time));
  }

  private static @Nullable Double share(@Nullable Double amount, @Nullable Double of) {
    return amount == null || of == null || of <= 0 ? null : (Double) (amount / of);
  }

  boolean runKmChangeKnown() {
    return timeline.weeks().runKmChange(this).known();
  }

  /** The coach's own sum of hours against the sessions written, in minutes; unknown without one. */
  public @Nullable Double hoursOffMinutes() {
    return timeline.weeks().hoursOff(this);
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, starts));
  }

  @Override
  public String toString() {
    return label();
  }

  private static @Nullable Double sum(Stream<@Nullable Double> parts) {
    double sum = 0;
    for (Double part : (Iterable<@Nullable Double>) parts::iterator) {
      if (part == null) {
        return null;
      }
      sum += part;
    }
    return Exact.of(sum);
  }
}
