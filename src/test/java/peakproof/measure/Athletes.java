package peakproof.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Event;
import peakproof.document.Goal;
import peakproof.document.Log;
import peakproof.document.Plan;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.document.Target;

/** An invented athlete before an invented race, written with only what measures read. */
public final class Athletes {
  /** The day before the plan begins. */
  public static final LocalDate AS_OF = LocalDate.of(2027, 5, 30);

  public static final LocalDate RACE = LocalDate.of(2027, 7, 4);

  private Athletes() {}

  /** What a plan is made of here; each `with` gives another. */
  public record Draft(
      Event.Legs legs,
      @Nullable String distance,
      @Nullable Goal goal,
      List<Athlete.Test> tests,
      @Nullable Double criticalPower,
      @Nullable Double maximum,
      @Nullable Double resting,
      Set<String> conditions) {

    public Draft withTests(Athlete.Test... others) {
      return new Draft(
          legs, distance, goal, List.of(others), criticalPower, maximum, resting, conditions);
    }

    public Draft withGoal(@Nullable Goal other) {
      return new Draft(legs, distance, other, tests, criticalPower, maximum, resting, conditions);
    }

    public Draft withLegs(Event.Legs other, @Nullable String word) {
      return new Draft(other, word, goal, tests, criticalPower, maximum, resting, conditions);
    }

    public Draft withConditions(String... others) {
      return new Draft(
          legs, distance, goal, tests, criticalPower, maximum, resting, Set.of(others));
    }

    public Draft withFigures(
        @Nullable Double power, @Nullable Double highest, @Nullable Double lowest) {
      return new Draft(legs, distance, goal, tests, power, highest, lowest, conditions);
    }

    public Plan plan() {
      return new Plan(
          "/plan", null, athlete(), event(), goal, null, List.of(), null, null, List.of(), Set.of(),
          Map.of(), List.of());
    }

    public Calibration calibration() {
      return calibration(null);
    }

    public Calibration calibration(@Nullable Log log) {
      return Calibration.of(plan(), log, AS_OF, ShippedConstants.constants());
    }

    private Athlete athlete() {
      return new Athlete(
          "/plan/athlete",
          "Tove Lindqvist",
          null,
          null,
          null,
          null,
          null,
          null,
          maximum,
          resting,
          null,
          criticalPower,
          null,
          tests,
          null,
          null,
          new Athlete.Health(null, null, List.of(), conditions, null),
          List.of(),
          null);
    }

    private Event event() {
      return new Event(
          "/event",
          "Saltmarsh Long Course",
          RACE,
          null,
          legs,
          distance,
          null,
          new Event.Swim(null, null, null, null, null, null, Set.of()),
          new Event.Bike(null, null, null, null, null),
          new Event.Run(null, null, null, null),
          new Event.Weather(null, null, null, null),
          new Event.CutOffs(null, null, null),
          null);
    }
  }

  /** A sound full-distance athlete: tests, goal 1:10:00, 6:00:00, 3:50:00 at 70 % of maximum. */
  public static Draft tove() {
    return new Draft(
        new Event.Legs(3800.0, 180_000.0, 42_195.0),
        null,
        goal(4200.0, 21_600.0, 13_800.0, 600.0, new Target.ShareOfMaximum(0.70)),
        List.of(
            swim("2027-05-08", 400, 388),
            swim("2027-05-08", 200, 185),
            run("2027-04-18", 21_097.5, 6090)),
        218.0,
        182.0,
        46.0,
        Set.of());
  }

  public static Goal goal(
      @Nullable Double swim,
      @Nullable Double bike,
      @Nullable Double run,
      @Nullable Double transitions,
      @Nullable Target bikeEffort) {
    return new Goal("/plan/goal", swim, bike, run, transitions, null, bikeEffort);
  }

  public static Athlete.Test swim(String date, double metres, double seconds) {
    return test(Sport.SWIM, date, metres, seconds);
  }

  public static Athlete.Test run(String date, double metres, double seconds) {
    return test(Sport.RUN, date, metres, seconds);
  }

  private static Athlete.Test test(Sport sport, String date, double metres, double seconds) {
    return new Athlete.Test(
        "/plan/athlete/tests/" + sport.word() + date + (int) metres,
        LocalDate.parse(date),
        sport,
        metres,
        null,
        seconds,
        null,
        null);
  }

  /** A logged session; what is not given is not recorded. */
  public static Session logged(Sport sport, Session.Recorded recorded) {
    return session(sport, null, recorded, null, null);
  }

  public static Session session(
      Sport sport,
      peakproof.document.@Nullable SetLine set,
      Session.Recorded recorded,
      Session.@Nullable Strength strength,
      @Nullable Session then) {
    return new Session(
        "/log/" + sport.word(),
        sport,
        set,
        recorded,
        Session.Scene.UNSAID,
        Session.Wear.UNSAID,
        null,
        strength,
        null,
        null,
        null,
        null,
        null,
        false,
        false,
        false,
        null,
        null,
        null,
        then);
  }

  /** A ride of some minutes and kilometres. */
  public static Session ride(double minutes, double km) {
    return logged(
        Sport.BIKE, new Session.Recorded(60 * minutes, 1000 * km, null, null, null, null, null));
  }

  /** A session and the day it was done. */
  public record Dated(String date, Session session) {}

  /** A log of sessions, several of a day together. */
  public static Log log(Dated... entries) {
    SortedMap<LocalDate, Log.Day> days = new TreeMap<>();
    for (Dated entry : entries) {
      LocalDate date = LocalDate.parse(entry.date);
      Log.Day earlier = days.get(date);
      List<Session> sessions = new ArrayList<>(earlier == null ? List.of() : earlier.sessions());
      sessions.add(entry.session);
      days.put(date, day(sessions));
    }
    return new Log("/log", null, Map.of(), days);
  }

  private static Log.Day day(List<Session> sessions) {
    return new Log.Day("/log/days", sessions, false, null, null, List.of(), null, Set.of());
  }
}
