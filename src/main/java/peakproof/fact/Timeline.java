package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
  private final Memo<peakproof.document.Session, SetBreakdown> breakdowns =
      new Memo<>(this::breakdownOf);
  private final Diary diary;
  private final LongSessions longSessions;
  private final Bricks bricks;
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
    this.longSessions = new LongSessions(this);
    this.diary = diary(firstDay());
    this.bricks = new Bricks(plan, this);
    this.skills = new Skills(sessions().filter(session -> !session.planned()).toList());
    this.rehearsals = Rehearsals.of(plan, diary.sessions(), calibration.distance(), constants);
    this.runs = new RunHistory(this);
    this.weeks = new Weeks(this, plan, log);
    this.followed = new Followed(plan, this);
    this.loads = new Loads(this, followed.pairs());
  }

  private Diary diary(LocalDate first) {
    List<Day> days = new ArrayList<>();
    first
        .datesUntil(first.isBefore(raceDate()) ? raceDate() : first)
        .forEach(date -> days.add(day(date)));
    return new Diary(first, days);
  }

  private LocalDate firstDay() {
    LocalDate first = asOf;
    if (!plan.weeks().isEmpty() && plan.weeks().get(0).starts().isBefore(first)) {
      first = plan.weeks().get(0).starts();
    }
    if (log != null && !log.days().isEmpty() && logBegins(log).isBefore(first)) {
      first = logBegins(log);
    }
    return Week.monday(first);
  }

  /** A log may be complete since before its first entry; nothing looks back more than a year. */
  private static LocalDate logBegins(Log log) {
    LocalDate entry = log.days().firstKey();
    LocalDate since = log.completeSince();
    if (since == null || !since.isBefore(entry)) {
      return entry;
    }
    LocalDate yearBefore = entry.minusYears(1);
    return since.isBefore(yearBefore) ? yearBefore : since;
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

  /** A session of plan or log as this athlete would do its set line; null without one. */
  @Nullable SetBreakdown breakdown(peakproof.document.Session written) {
    return breakdowns.of(written);
  }

  private @Nullable SetBreakdown breakdownOf(peakproof.document.Session written) {
    return written.set() == null
        ? null
        : SetBreakdown.of(written.set(), sport(written), calibration, constants);
  }

  private static Sport sport(peakproof.document.Session written) {
    return written.sport() == null ? Sport.OTHER : written.sport();
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
    Sport sport = sport(written);
    Session.Draft draft =
        new Session.Draft(this, date, planned, written, breakdown(written), before);
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

  Bricks bricks() {
    return bricks;
  }

  LongSessions longSessions() {
    return longSessions;
  }

  Diary diary() {
    return diary;
  }

  List<Day> days() {
    return diary.days();
  }

  @Nullable Day at(LocalDate date) {
    return diary.at(date);
  }

  Stream<Session> sessions() {
    return diary.sessions().stream();
  }

  /** The days of a span, both ends in; days before the first entry are unknown. */
  List<Day> between(LocalDate from, LocalDate to) {
    List<Day> known = diary.between(from, to);
    if (!from.isBefore(diary.first())) {
      return known;
    }
    List<Day> span = new ArrayList<>();
    for (LocalDate date = from;
        date.isBefore(diary.first()) && date.isBefore(raceDate()) && !date.isAfter(to);
        date = date.plusDays(1)) {
      span.add(new Day(date, Known.UNKNOWN, List.of(), null, null, constants));
    }
    span.addAll(known);
    return span;
  }

  LocalDate firstChangeable() {
    Day today = at(asOf);
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
}
