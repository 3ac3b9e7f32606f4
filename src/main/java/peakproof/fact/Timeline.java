package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Dossier;
import peakproof.document.Log;
import peakproof.document.Plan;
import peakproof.document.PlanDay;
import peakproof.document.PlanWeek;
import peakproof.document.Sport;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.SetBreakdown;

/**
 * All days from the first entry to the eve of the race: before the as-of date from the log only,
 * after it from the plan only, on it from the log when that lists training.
 */
final class Timeline {
  private final Plan plan;
  private final @Nullable Log log;
  private final LocalDate asOf;
  private final Calibration calibration;
  private final Constants constants;
  private final Map<LocalDate, PlanWeek> writtenWeeks = new HashMap<>();
  private final TreeMap<LocalDate, Day> days = new TreeMap<>();
  private final Memo<Session, Double> longMinutes = new Memo<>(this::longMinutesOf);
  private final List<Brick> bricks;
  private final Weeks weeks;
  private final RunHistory runs;
  private final RaceEffort effort;
  private final Skills skills;
  private final Rehearsals rehearsals;
  private final Followed followed;
  private final Loads loads;

  Timeline(Dossier dossier, LocalDate asOf, Calibration calibration, Constants constants) {
    this.plan = dossier.plan();
    this.log = dossier.log();
    this.asOf = asOf;
    this.calibration = calibration;
    this.constants = constants;
    this.effort = new RaceEffort(plan, calibration, constants);
    plan.weeks().forEach(week -> writtenWeeks.put(week.starts(), week));
    for (LocalDate date = firstDay(); date.isBefore(raceDate()); date = date.plusDays(1)) {
      days.put(date, day(date));
    }
    this.skills = new Skills(sessions().filter(session -> !session.planned()).toList());
    this.rehearsals = Rehearsals.of(plan, sessions().toList(), calibration.distance(), constants);
    this.runs = new RunHistory(this);
    this.weeks = new Weeks(this, plan, log);
    this.bricks = findBricks();
    this.followed = new Followed(plan, this);
    this.loads = new Loads(this, followed.pairs());
  }

  private LocalDate firstDay() {
    LocalDate first = asOf;
    if (!plan.weeks().isEmpty() && plan.weeks().get(0).starts().isBefore(first)) {
      first = plan.weeks().get(0).starts();
    }
    if (log != null && !log.days().isEmpty() && log.days().firstKey().isBefore(first)) {
      first = log.days().firstKey();
    }
    return Week.monday(first);
  }

  private Day day(LocalDate date) {
    Log.Day entry = log == null ? null : log.days().get(date);
    PlanWeek week = writtenWeeks.get(Week.monday(date));
    PlanDay planDay = week == null ? null : week.days().get(date.getDayOfWeek());
    Known known = known(date, entry, week);
    List<peakproof.document.Session> written =
        switch (known) {
          case DONE -> entry == null ? List.of() : entry.sessions();
          case PLANNED -> planDay == null ? List.of() : planDay.sessions();
          default -> List.of();
        };
    List<Session> sessions = new ArrayList<>();
    written.forEach(session -> add(date, known == Known.PLANNED, session, null, sessions));
    return new Day(date, known, List.copyOf(sessions), entry, planDay, constants);
  }

  private Known known(LocalDate date, Log.@Nullable Day entry, @Nullable PlanWeek week) {
    boolean trained =
        entry != null && (!entry.sessions().isEmpty() || entry.rest() || entry.missed() != null);
    if (date.isAfter(asOf) || date.equals(asOf) && !trained) {
      return week != null ? Known.PLANNED : beforePlan(date) ? Known.UNKNOWN : Known.UNWRITTEN;
    }
    return trained || complete(date) ? Known.DONE : Known.UNKNOWN;
  }

  /** What comes after the newest entry has not been written down yet, however complete the log. */
  private boolean complete(LocalDate date) {
    return log != null
        && log.completeSince() != null
        && !date.isBefore(log.completeSince())
        && !log.days().isEmpty()
        && !date.isAfter(log.days().lastKey());
  }

  /** A day that the first written week comes after is one for the log. */
  boolean beforePlan(LocalDate date) {
    return !plan.weeks().isEmpty() && date.isBefore(plan.weeks().get(0).starts());
  }

  private void add(
      LocalDate date,
      boolean planned,
      peakproof.document.Session written,
      @Nullable Session before,
      List<Session> into) {
    if (date.equals(raceDate()) && written.race() != null) {
      return;
    }
    Sport sport = written.sport() == null ? Sport.OTHER : written.sport();
    SetBreakdown set =
        written.set() == null
            ? null
            : SetBreakdown.of(written.set(), sport, calibration, constants);
    Session.Draft draft = new Session.Draft(this, date, planned, written, set, before);
    Session session =
        switch (sport) {
          case SWIM -> new Swim(draft);
          case BIKE -> new Ride(draft);
          case RUN -> new Run(draft);
          case STRENGTH -> new Strength(draft);
          case OTHER -> new OtherSession(draft);
        };
    into.add(session);
    if (written.then() != null) {
      add(date, planned, written.then(), session, into);
    }
  }

  private List<Brick> findBricks() {
    List<Brick> found = new ArrayList<>();
    sessions()
        .filter(Run.class::isInstance)
        .map(Run.class::cast)
        .forEach(
            run -> {
              Ride ride = run.ride();
              if (ride != null) {
                found.add(brick(ride, run));
              }
            });
    return List.copyOf(found);
  }

  private Brick brick(Ride ride, Run run) {
    Double goal = plan.goal() == null ? null : plan.goal().bike();
    Double leg = plan.event().legs().run();
    Double minutes = ride.minutes();
    Double metres = run.metres();
    return new Brick(
        ride,
        run,
        goal == null || minutes == null ? null : (Double) (minutes * 60 / goal),
        leg == null || metres == null ? null : (Double) (metres / leg));
  }

  /** A ride that ends on the day within minutes of the run's start, by the clock. */
  @Nullable Ride rideJustBefore(Run run) {
    Day day = days.get(run.date());
    if (day == null || run.written.time() == null || run.before != null) {
      return null;
    }
    for (Session session : day.sessions()) {
      Double minutes = session.minutes();
      if (session instanceof Ride ride && ride.written.time() != null && minutes != null) {
        double gap =
            ChronoUnit.SECONDS.between(ride.written.time(), run.written.time()) / 60.0 - minutes;
        if (gap >= 0 && gap <= constant(Constant.BRICK_WITHIN)) {
          return ride;
        }
      }
    }
    return null;
  }

  LocalDate raceDate() {
    return plan.event().date();
  }

  /** Air of race day, °C; null when the event gives none. */
  @Nullable Double raceAir() {
    return plan.event().weather().air();
  }

  LocalDate asOf() {
    return asOf;
  }

  Calibration calibration() {
    return calibration;
  }

  double constant(Constant constant) {
    return constants.of(constant);
  }

  Constants constants() {
    return constants;
  }

  Weeks weeks() {
    return weeks;
  }

  RunHistory runs() {
    return runs;
  }

  RaceEffort effort() {
    return effort;
  }

  Followed followed() {
    return followed;
  }

  Loads loads() {
    return loads;
  }

  Skills skills() {
    return skills;
  }

  Rehearsals rehearsals() {
    return rehearsals;
  }

  List<Brick> bricks() {
    return bricks;
  }

  Iterable<Day> days() {
    return days.values();
  }

  @Nullable Day at(LocalDate date) {
    return days.get(date);
  }

  Stream<Session> sessions() {
    return days.values().stream().flatMap(day -> day.sessions().stream());
  }

  /** The days of a span, both ends in; days before the first entry are unknown. */
  List<Day> between(LocalDate from, LocalDate to) {
    List<Day> span = new ArrayList<>();
    for (LocalDate date = from; !date.isAfter(to); date = date.plusDays(1)) {
      Day day = days.get(date);
      if (day != null) {
        span.add(day);
      } else if (date.isBefore(raceDate())) {
        span.add(new Day(date, Known.UNKNOWN, List.of(), null, null, constants));
      }
    }
    return span;
  }

  LocalDate firstChangeable() {
    Day today = days.get(asOf);
    return today != null && today.changeable() ? asOf : asOf.plusDays(1);
  }

  boolean hasLately() {
    return plan.athlete().lately() != null;
  }

  Athlete.Lately lately() {
    return Objects.requireNonNull(plan.athlete().lately());
  }

  @Nullable PlanWeek writtenWeek(LocalDate monday) {
    return writtenWeeks.get(monday);
  }

  /** The entry of a planned day: the day as written, else its week. */
  Where whereOf(Day day) {
    PlanWeek week = writtenWeeks.get(Week.monday(day.date()));
    String pointer =
        day.plan() != null ? day.plan().at() : week != null ? week.at() : plan.at() + "/weeks";
    return new Where(pointer, day.date(), null);
  }

  static String notWritten(LocalDate monday) {
    return Words.WEEK_OF + Words.day(monday) + Words.NOT_WRITTEN;
  }

  /** The longest session of the same sport in the eight weeks before, minutes; null without one. */
  @Nullable Double longestMinutesBefore(Session session) {
    LocalDate from = longFrom(session);
    Double written = longest(session.sport(), from, session.date().minusDays(1));
    Double stated = from.isBefore(asOf) ? statedLongestMinutes(session.sport()) : null;
    return written == null || stated == null
        ? written == null ? stated : written
        : (Double) Math.max(written, stated);
  }

  /** False when the log is too old to tell the longest of the eight weeks before. */
  boolean longestIsLogged(Session session) {
    return unloggedSince(longFrom(session), session.date().minusDays(1)) == null;
  }

  private LocalDate longFrom(Session session) {
    return session.date().minusWeeks((long) constant(Constant.LONG_WEEKS));
  }

  private @Nullable Double statedLongestMinutes(Sport sport) {
    if (!hasLately()) {
      return null;
    }
    Double seconds =
        switch (sport) {
          case BIKE -> lately().longestRideSeconds();
          case RUN -> lately().longestRunSeconds();
          default -> null;
        };
    return seconds == null ? null : (Double) (seconds / 60);
  }

  private @Nullable Double longest(Sport sport, LocalDate from, LocalDate to) {
    Double longest = null;
    for (Day day : days.subMap(from, true, to, true).values()) {
      for (Session session : day.sessions()) {
        Double minutes = session.minutes();
        if (session.sport() == sport && minutes != null) {
          longest = longest == null ? minutes : (Double) Math.max(longest, minutes);
        }
      }
    }
    return longest;
  }

  /**
   * The day from which the log lags behind the plan in a span, so that what was done since is not
   * known; null while it is at most a few days old there. What a coach states in its place is of
   * the time before the plan.
   */
  @Nullable LocalDate unloggedSince(LocalDate from, LocalDate to) {
    LocalDate lagging = firstUnlogged();
    if (lagging == null) {
      return null;
    }
    LocalDate first = lagging.isBefore(from) ? from : lagging;
    LocalDate until = to.isBefore(asOf) ? to.plusDays(1) : asOf;
    boolean old = ChronoUnit.DAYS.between(first, until) > constant(Constant.LOG_STALE);
    return old ? first : null;
  }

  private @Nullable LocalDate firstUnlogged() {
    if (log != null && !log.days().isEmpty()) {
      return log.days().lastKey().plusDays(1);
    }
    return plan.weeks().isEmpty() ? null : plan.weeks().get(0).starts();
  }

  /** Minutes from which a ride or a run is a long one. */
  double longMinutes(Session session) {
    return Objects.requireNonNull(longMinutes.of(session));
  }

  private double longMinutesOf(Session session) {
    double usual = constant(session.sport() == Sport.RUN ? Constant.LONG_RUN : Constant.LONG_RIDE);
    Double longest = knowsWeeksBefore(session) ? longestMinutesBefore(session) : null;
    double least = effort.shortCourse() ? usual * constant(Constant.LONG_SHORT_COURSE) : usual;
    return longest == null ? least : Math.min(least, constant(Constant.LONG_SHARE) * longest);
  }

  /** A share of the longest says nothing while the longest may lie in days nobody wrote down. */
  private boolean knowsWeeksBefore(Session session) {
    LocalDate from = longFrom(session);
    List<Day> weeks = between(from, session.date().minusDays(1));
    long known = weeks.stream().filter(Day::isKnown).count();
    return known >= weeks.size() * constant(Constant.COVERAGE_LEAST);
  }

  /** Minutes of the longest ride on the run's day or the day before, but the one it follows. */
  double longestRideWithinDay(Run run) {
    Ride straightBefore = run.ride();
    double longest = 0;
    for (Day day : between(run.date().minusDays(1), run.date())) {
      for (Session session : day.sessions()) {
        if (session == run) {
          break;
        }
        Double minutes = session.minutes();
        if (session instanceof Ride && session != straightBefore && minutes != null) {
          longest = Math.max(longest, minutes);
        }
      }
    }
    return longest;
  }
}
