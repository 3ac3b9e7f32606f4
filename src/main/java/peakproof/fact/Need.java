package peakproof.fact;

import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What a rule's card may name under {@code needs}: something that has to be known before the rule
 * can judge. Fields of a rule's own windows are needs too, written {@code window.openWaterSwims}.
 */
@SuppressWarnings("ImmutableEnumChecker") // the predicates hold nothing
public enum Need {
  RACE_WATER("race.water", "event.swim.water", facts -> facts.race().water() != null),
  RACE_DISTANCE("race.distance", "event.distance", facts -> facts.race().distance() != null),
  RACE_START("race.start", "event.swim.start", facts -> facts.race().start() != null),
  RACE_RUN_DESCENT(
      "race.run-descent",
      "event.run.descent",
      facts -> facts.ofRace().runCourse().descentPerKm() != null),
  RACE_SWIM("race.swim", "event.legs.swim", facts -> facts.race().swimMetres() != null),
  RACE_WETSUIT("race.wetsuit", "event.swim.wetsuit", facts -> facts.race().wetsuitLikely() != null),
  RACE_CLIMB(
      "race.climb",
      "event.bike.climb and event.legs.bike",
      facts -> facts.ofRace().bikeCourse().climbRate() != null),
  RACE_DRAFTING("race.drafting", "event.bike.drafting", facts -> facts.ofRace().saysDrafting()),
  RACE_EXPECTED("race.expected", "goal.total", facts -> facts.race().expectedMinutes() != null),
  GOAL_SWIM("goal.swim", "goal.swim", facts -> facts.goal().swimPace() != null),
  GOAL_BIKE("goal.bike", "goal.bike", facts -> facts.goal().bikeMinutes() != null),
  GOAL_RUN("goal.run", "goal.run", facts -> facts.calibration().goalRunPace().known()),
  GOAL_TOTAL("goal.total", "goal.total", facts -> facts.goal().totalMinutes() != null),
  GOAL_LEGS(
      "goal.legs",
      "goal.swim, goal.bike, goal.run and goal.transitions",
      facts -> facts.goal().sumMinutes() != null),
  BIKE_EFFORT(
      "goal.bike-effort", "goal.bike-effort", facts -> facts.calibration().bikeGoal() != null),
  SWIM_TESTS(
      "tests.swim",
      "athlete.tests (400m and 200m swims)",
      facts -> facts.goal().criticalSwimPace() != null),
  SWIM_TESTS_OR_HELD(
      "swim.shown",
      "athlete.tests (400m and 200m swims), or held: on a goal-pace set in the log",
      facts -> facts.goal().criticalSwimPace() != null || facts.goal().heldSwimPace() != null),
  CAFFEINE_FOR(
      "caffeine.for",
      "athlete.mass and athlete.born",
      facts ->
          facts.ofRace().caffeine() == null
              || facts.ofRace().caffeine().perKg() != null
              || facts.ofRace().caffeine().age() != null,
      facts ->
          facts.ofRace().caffeine() == null
              || facts.ofRace().caffeine().perKg() != null
                  && facts.ofRace().caffeine().age() != null),
  RACE_CARBOHYDRATE(
      "race-day.carbohydrates",
      "carbohydrate for bike and run under race-day.fuel",
      facts ->
          facts.raceDay().bikeCarbohydrate() != null && facts.raceDay().runCarbohydrate() != null),
  CUT_OFFS("race.cut-offs", "event.cut-offs", facts -> facts.ofRace().hasTimeLimits()),
  PROJECTION(
      "race.projection",
      "athlete.tests and logged long rides",
      facts -> facts.ofRace().projectsTimeLimits(),
      facts -> facts.ofRace().projectsAllTimeLimits()),
  RACE_WATER_CELSIUS(
      "race.water-celsius",
      "event.swim.temperature",
      facts -> facts.ofRace().suitLimit().celsius() != null),
  RACE_MINIMUM_AGE(
      "race.minimum-age", "event.minimum-age", facts -> facts.ofRace().saysMinimumAge()),
  ATHLETE_AGE("athlete.age", "athlete.born", facts -> facts.athlete().age() != null),
  ATHLETE_RISK("athlete.risk", "athlete.health.conditions", facts -> facts.health().file().risk()),
  ATHLETE_EXPERIENCE(
      "athlete.experience", "athlete.experience", facts -> facts.athlete().firstTimer() != null),
  SWIMS_WATER(
      "swims.water",
      "water of the open-water swims to come",
      facts -> true,
      facts -> facts.health().saysWater()),
  SWIMS_COLD_BEFORE(
      "swims.cold-before",
      "where and water of the swims of the weeks before the cold one",
      facts -> true,
      facts ->
          facts.health().coldSwims().stream().allMatch(cold -> cold.coldSwimsBefore() != null)),
  SLEEP_NIGHTS(
      "sleep.nights",
      "morning.sleep of the last seven days",
      facts -> facts.health().sleep() != null,
      facts -> facts.health().sleep() == null || facts.health().sleep().meanMinutes() != null),
  SLEEP_LOAD(
      "sleep.load",
      "a log of the last five weeks with times and ratings",
      facts -> true,
      facts -> facts.health().sleep() == null || facts.health().sleep().loadAboveUsual() != null),
  TAPER_START(
      "taper.start",
      "block.taper-weeks, or focus on the weeks",
      facts -> facts.health().knowsTaperStart()),
  TAPER_START_MORNINGS(
      "taper-start.mornings",
      "morning.mood and morning.sleep of the last seven days",
      facts ->
          facts.health().taperStart() == null || facts.health().taperStart().lowMornings() != null),
  TAPER_START_RESULTS(
      "taper-start.results",
      "two tests of a kind under athlete.tests, one of the last four weeks",
      facts -> facts.health().taperStart() == null || facts.health().taperStart().fallKnown()),
  WARNED_WHERE(
      "warned.where",
      "where of the key sessions on days with a warning",
      facts -> true,
      facts -> facts.health().warned().stream().allMatch(WarnedSession::known)),
  COMEBACK_WEEK(
      "comeback.week",
      "the first week back with all its lengths, and a log of the weeks before the illness",
      facts -> true,
      facts -> facts.health().knowsFirstWeeks()),
  PAST("past", "a log, or athlete.lately", Facts::knowsThePast),
  WEEKS_PHASE(
      "weeks.phase",
      "block.peak-weeks and block.taper-weeks, or focus on the weeks",
      Ahead::somePhase),
  WEEKS_MINUTES(
      "weeks.minutes",
      "time or set lines of all sessions",
      facts -> Ahead.someWeek(facts, week -> week.minutes() != null)),
  WEEKS_MINUTES_CHANGE(
      "weeks.minutes-change",
      "a log of the last three weeks, or athlete.lately.hours",
      facts -> Ahead.someWeek(facts, week -> week.minutesChange() != null),
      facts -> Ahead.weeks(facts).allMatch(Week::minutesChangeKnown)),
  WEEKS_RUN_CHANGE(
      "weeks.run-change",
      "run distances of the plan, and of the log of the last three weeks",
      facts -> Ahead.someWeek(facts, week -> week.runKmChange() != null),
      facts -> Ahead.weeks(facts).allMatch(Week::runKmChangeKnown)),
  WEEKS_RUN_KM(
      "weeks.run-km",
      "distance or paces of the runs",
      facts -> Ahead.someWeek(facts, week -> week.runKm() != null)),
  WEEKS_SWIM(
      "weeks.swim",
      "distances of the swims in the plan, and in the log of the last three weeks",
      facts -> true,
      facts -> Ahead.weeks(facts).allMatch(Week::swimMetresChangeKnown)),
  WEEKS_USUAL(
      "weeks.usual",
      "a log of the last four weeks with times and ratings",
      facts -> true,
      facts -> Ahead.weeks(facts).allMatch(week -> week.usualShare() != null)),
  SPORTS_LOGGED(
      "sports.logged",
      "a log of all days of the peak weeks up to now",
      facts -> true,
      facts -> facts.training().absences().stream().noneMatch(gap -> gap.mayReach(Reach.ABSENT))),
  STRENGTH_TOLD(
      "strength.told",
      "for and load of the strength work of the last three weeks",
      facts -> true,
      facts ->
          facts
              .training()
              .planned()
              .filter(session -> session.daysToRace() <= Reach.LATE)
              .noneMatch(session -> session instanceof Strength work && work.untold())),
  RUNS_SPIKE(
      "runs.spike",
      "run distances of the plan, and of the log of the last 30 days",
      facts -> Ahead.noneOrSomeRun(facts, run -> run.spike() != null),
      facts -> facts.training().plannedRuns().allMatch(Run::spikeKnown)),
  RUNS_GAP(
      "runs.gap",
      "log.complete-since",
      facts -> Ahead.noneOrSomeRun(facts, run -> run.daysWithoutRun() != null)),
  SESSIONS_LONGEST(
      "sessions.longest",
      "a log up to now",
      facts -> true,
      facts -> facts.training().planned().allMatch(Session::longestIsLogged)),
  RACES_EFFORT(
      "races.effort",
      "effort and legs of the races on the way",
      facts -> true,
      facts -> facts.training().racesOnTheWay().stream().allMatch(RaceOnTheWay::settled)),
  SESSIONS_MINUTES(
      "sessions.minutes",
      "time or set lines of all sessions",
      facts -> true,
      facts ->
          facts
              .training()
              .planned()
              .filter(Session::endurance)
              .allMatch(session -> session.minutes() != null)),
  INDOOR_SHARE(
      "indoor.share",
      "where and time of the rides of the peak weeks, and a log of those that are over",
      facts ->
          facts.training().indoorRiding() == null
              || facts.training().indoorRiding().indoorShare() != null),
  ADHERENCE_SESSIONS(
      "adherence.sessions",
      Entries.PAST_WEEKS,
      facts -> !facts.training().adherence().isEmpty() || Ahead.nothing(facts)),
  ADHERENCE_EXCESS(
      "adherence.excess",
      Entries.PAST_WEEKS,
      facts -> facts.training().knowsExcess() || Ahead.nothing(facts)),
  EASY_SESSIONS(
      "easy.sessions",
      Entries.PAST_WEEKS,
      facts -> facts.training().easySessions() != null || Ahead.nothing(facts)),
  HEAVY_SHARE(
      "heavy.share",
      "a log of the last weeks with time and ratings, heart rates or powers",
      facts ->
          facts.training().heavyWork().isEmpty()
              || facts.training().heavyWork().stream().anyMatch(work -> work.heavyShare() != null)),
  TESTS_OR_LOG(
      "tests.any",
      "athlete.tests, or a log with tests and races",
      facts -> facts.training().goalTests().any()),
  RUN_FRESH(
      "run.fresh",
      "goal.run and a run race or test of the last 16 weeks under athlete.tests",
      facts -> facts.ofRace().runLegCost() != null),
  TAPER_LENGTH(
      "taper.length",
      "block.taper-weeks or focus, the taper weeks, and a log of the weeks before",
      facts -> facts.training().taper() == null || facts.training().taper().lengthKnown()),
  TAPER_SESSIONS(
      "taper.sessions",
      "the taper weeks, and a log of the weeks before",
      facts -> facts.training().taper() == null || facts.training().taper().sharesKnown()),
  BIKE_POWER(
      "goal.bike-power",
      "athlete.bike.critical-power, or two power tests to exhaustion",
      facts ->
          facts.ofRace().bikeGoal().goalWatts() == null
              || facts.ofRace().bikeGoal().goalShare() != null),
  BIKE_WATTS(
      "goal.bike-watts",
      "goal.bike, athlete.mass, and power under goal.bike-effort or athlete.bike.critical-power",
      facts -> facts.ofRace().bikeGoal().overShare() != null),
  RIDES_HELD(
      "rides.held",
      "heart-rate.max or bike.critical-power of the athlete, and goal.bike-effort",
      facts ->
          Ahead.noRide(facts)
              || facts.training().rideEfforts().stream()
                  .anyMatch(ride -> ride.powerShare() != null || ride.heartShare() != null),
      Ahead::noRide),
  RACE_HEAT(
      "race.heat", "event.weather: wbgt, or air and humidity", f -> f.ofRace().weather() != null),
  RACE_SUIT(
      "race.suit",
      "event.swim.wetsuit, or event.rule-book with event.swim.temperature",
      facts -> facts.ofRace().suit().ruling() != null),
  RACE_DAY_SUIT(
      "race-day.wetsuit", "race-day.wetsuit.worn", facts -> facts.ofRace().suit().worn() != null),
  RACE_DAY_CARBOHYDRATE(
      "race-day.carbohydrate",
      "race-day.fuel with carbohydrate for the bike and the run",
      facts ->
          facts.ofRace().fuelsItself()
              || facts.raceDay().bikeCarbohydrate() != null
              || facts.raceDay().runCarbohydrate() != null,
      facts ->
          facts.ofRace().fuelsItself()
              || facts.raceDay().bikeCarbohydrate() != null
                  && facts.raceDay().runCarbohydrate() != null),
  RACE_DAY_FLUID(
      "race-day.fluid",
      "race-day.fuel with fluid for the bike and the run",
      facts ->
          facts.ofRace().fuelsItself()
              || facts.raceDay().bikeFluid() != null
              || facts.raceDay().runFluid() != null,
      facts ->
          facts.ofRace().fuelsItself()
              || facts.raceDay().bikeFluid() != null && facts.raceDay().runFluid() != null),
  WEEKS_LOAD(
      "weeks.load",
      "a log of the last weeks with time and rating of every session",
      facts ->
          Ahead.loads(facts).anyMatch(WeekLoad::spreadKnown)
              || Ahead.loads(facts).findAny().isEmpty(),
      facts -> Ahead.loads(facts).allMatch(WeekLoad::spreadKnown)),
  WEEKS_STRAIN(
      "weeks.strain",
      "a log of twelve weeks with time and rating of every session",
      facts ->
          Ahead.buildLoads(facts).anyMatch(week -> week.strainRankShare() != null)
              || Ahead.buildLoads(facts).findAny().isEmpty(),
      facts -> Ahead.buildLoads(facts).allMatch(week -> week.strainRankShare() != null)),
  WEEKS_RATIO(
      "weeks.ratio",
      "phases, and a log of four weeks with time and rating of every session",
      facts ->
          Ahead.loads(facts).anyMatch(week -> week.ratio() != null)
              || Ahead.loads(facts).findAny().isEmpty(),
      facts -> Ahead.loads(facts).allMatch(week -> week.ratio() != null)),
  AVAILABLE(
      "athlete.available",
      "hours and weekday under athlete.available",
      facts -> facts.training().saysAvailable()),
  BLOCK_PHASES(
      "block.phases",
      "block.peak-weeks and block.taper-weeks, or focus on the weeks",
      facts -> facts.block().peakWeeks() != null && facts.block().taperWeeks() != null);

  /** How far the settings of the cards reach: beyond it, what is not known makes no difference. */
  private static final class Reach {
    /** Days before the race from which heavy strength work may at the earliest be ruled out. */
    static final double LATE = 21;

    /** The fewest days without a sport that may be called too many. */
    static final double ABSENT = 7;
  }

  /** Entries that settle more than one need: they are then asked for once. */
  private static final class Entries {
    static final String PAST_WEEKS =
        "the past four weeks in the plan, and a log of all their days with times and ratings";
  }

  private static final Map<String, Need> BY_KEY =
      Arrays.stream(values()).collect(Collectors.toMap(Need::key, Function.identity()));

  private final String key;
  private final String entry;
  private final Predicate<Facts> met;
  private final Predicate<Facts> everywhere;

  Need(String key, String entry, Predicate<Facts> met) {
    this(key, entry, met, facts -> true);
  }

  Need(String key, String entry, Predicate<Facts> met, Predicate<Facts> everywhere) {
    this.key = key;
    this.entry = entry;
    this.met = met;
    this.everywhere = everywhere;
  }

  /** The word of the cards. */
  public String key() {
    return key;
  }

  /** The entry that settles it, as the coach knows it. */
  public String entry() {
    return entry;
  }

  boolean met(Facts facts) {
    return met.test(facts);
  }

  boolean metEverywhere(Facts facts) {
    return everywhere.test(facts);
  }

  /** The need of a key that {@link #keys()} holds. */
  public static Need of(String key) {
    return Objects.requireNonNull(BY_KEY.get(key), key);
  }

  /** All keys, the fields of windows aside. */
  public static Set<String> keys() {
    return BY_KEY.keySet();
  }

  /** All keys with the fields of windows. */
  public static Set<String> keysWithWindows() {
    return WithWindows.KEYS;
  }

  /** Found out once, and not before somebody asks. */
  private static final class WithWindows {
    private static final Set<String> KEYS = keys();

    private static Set<String> keys() {
      Set<String> keys = new TreeSet<>(Need.keys());
      Arrays.stream(Window.class.getMethods())
          .filter(method -> method.getDeclaringClass() == Window.class)
          .filter(method -> method.getParameterCount() == 0)
          .forEach(method -> keys.add("window." + method.getName()));
      return Collections.unmodifiableSet(keys);
    }
  }
}
