package peakproof.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Workup;
import peakproof.document.Event;
import peakproof.document.Goal;
import peakproof.document.Log;
import peakproof.document.Plan;
import peakproof.document.PlanDay;
import peakproof.document.PlanWeek;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.document.Target;
import peakproof.measure.Calibration;
import peakproof.measure.Guide;

/** Makes the brief of a plan that was worked out: picks the athlete's words, and no others. */
public final class Briefing {
  /** Goal legs that miss the total by more are not added up for the athlete. */
  private static final double SAME = 60;

  private final Workup workup;
  private final Plan plan;
  private final SessionWords words;

  private Briefing(Workup workup) {
    this.workup = workup;
    this.plan = workup.dossier().plan();
    this.words = new SessionWords(workup.calibration(), workup.constants());
  }

  /**
   * The brief from the first day that is still to come, its week whole.
   *
   * @param zone of the race's venue; null when nobody says
   */
  public static Brief of(Workup workup, @Nullable ZoneId zone) {
    return new Briefing(workup).brief(zone);
  }

  private Brief brief(@Nullable ZoneId zone) {
    Event event = plan.event();
    List<PlanWeek> written = plan.weeks().stream().filter(this::toCome).toList();
    List<Brief.Week> weeks = new ArrayList<>();
    for (PlanWeek week : written) {
      weeks.add(week(week, weeks.size() + 1, written.size()));
    }
    return new Brief(
        Printable.of(plan.athlete().name()),
        workup.asOf(),
        plan.athlete().name() + "\n" + event.date(),
        new Brief.Race(
            Printable.of(event.name()), event.date(), event.start(), zone, RaceWords.facts(event)),
        goals(),
        weeks,
        open(),
        ToRehearse.of(written, event.date()),
        RaceWords.fuelling(plan),
        RaceWords.week(plan, written),
        RaceCard.of(event, plan.goal()),
        Cautions.of(plan, written));
  }

  /** True for a week with a day that the log does not tell of already. */
  private boolean toCome(PlanWeek week) {
    Log log = workup.dossier().log();
    boolean known = log != null && log.days().containsKey(workup.asOf());
    LocalDate first = known ? workup.asOf().plusDays(1) : workup.asOf();
    return !week.starts().plusDays(6).isBefore(first);
  }

  private Brief.Week week(PlanWeek week, int number, int of) {
    List<Brief.Day> days = new ArrayList<>();
    for (DayOfWeek weekday : DayOfWeek.values()) {
      PlanDay day = week.days().get(weekday);
      LocalDate date = week.starts().plusDays(weekday.getValue() - 1L);
      boolean race = date.equals(plan.event().date());
      List<Session> sessions = day == null ? List.of() : day.sessions();
      days.add(
          new Brief.Day(
              date,
              day == null ? List.of() : Cautions.warnings(day.warnings()),
              sessions.stream()
                  .filter(session -> !(race && session.race() != null))
                  .map(words::of)
                  .toList(),
              race));
    }
    String title =
        Figures.dotted(
            "Week of " + peakproof.fact.Words.day(week.starts()),
            focus(week),
            number + " of " + of);
    return new Brief.Week(week.starts(), title, days);
  }

  private String focus(PlanWeek week) {
    LocalDate end = week.starts().plusDays(6);
    LocalDate race = plan.event().date();
    if (!race.isBefore(week.starts()) && !race.isAfter(end)) {
      return "race week";
    }
    String focus = week.focus();
    return focus == null
        ? ""
        : switch (focus) {
          case "build" -> "building";
          case "peak" -> "a big week";
          case "taper" -> "taper";
          case "lighter" -> "a lighter week";
          case "camp" -> "training camp";
          default -> focus;
        };
  }

  /** What lies between the last written week and race week. */
  private @Nullable String open() {
    LocalDate race = plan.event().date();
    LocalDate raceWeek = race.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    LocalDate next =
        plan.weeks().stream()
            .map(PlanWeek::starts)
            .max(LocalDate::compareTo)
            .map(last -> last.plusWeeks(1))
            .orElse(workup.asOf());
    return next.isAfter(raceWeek)
        ? null
        : "The days from " + peakproof.fact.Words.weekday(next) + " to the race will follow.";
  }

  private List<Brief.Goal> goals() {
    Goal goal = plan.goal();
    if (goal == null) {
      return List.of();
    }
    Event.Legs legs = plan.event().legs();
    Calibration athlete = workup.calibration();
    Double swim = athlete.goalSwimPace().value();
    Double run = athlete.goalRunPace().value();
    List<Brief.Goal> goals = new ArrayList<>();
    goals.add(
        leg(
            "Swim",
            legs.swim(),
            goal.swim(),
            Sport.SWIM,
            swim == null ? "" : Figures.pace(swim / 100, Sport.SWIM, false)));
    goals.add(new Brief.Goal("Transitions", null, clock(goal.transitions()), ""));
    goals.add(leg("Bike", legs.bike(), goal.bike(), Sport.BIKE, ride(goal.bikeEffort())));
    goals.add(
        leg(
            "Run",
            legs.run(),
            goal.run(),
            Sport.RUN,
            run == null ? "" : Figures.pace(run / 1000, Sport.RUN, false)));
    goals.add(new Brief.Goal("Total", null, clock(total(goal)), ""));
    return goals.stream().filter(each -> each.time() != null || !each.hold().isEmpty()).toList();
  }

  private static Brief.Goal leg(
      String name, @Nullable Double metres, @Nullable Double seconds, Sport sport, String hold) {
    return new Brief.Goal(
        name, metres == null ? null : Figures.distance(metres, sport), clock(seconds), hold);
  }

  private String ride(@Nullable Target effort) {
    Double speed = workup.calibration().goalBikeSpeed().value();
    Guide held = effort == null ? null : Guide.of(effort, workup.calibration());
    return Figures.dotted(
        speed == null ? null : Figures.number(speed) + " km/h",
        held == null ? null : Figures.exactly(held, Sport.BIKE, false));
  }

  /** Of the legs where all are given, so that it agrees with the race-day card. */
  private static @Nullable Double total(Goal goal) {
    List<Double> legs =
        Stream.of(goal.swim(), goal.transitions(), goal.bike(), goal.run())
            .filter(Objects::nonNull)
            .toList();
    Double said = goal.total();
    double sum = legs.stream().mapToDouble(Double::doubleValue).sum();
    if (legs.size() < 4) {
      return said;
    }
    return said != null && Math.abs(said - sum) < SAME ? said : (Double) sum;
  }

  private static @Nullable String clock(@Nullable Double seconds) {
    return seconds == null ? null : Figures.clock(seconds);
  }
}
