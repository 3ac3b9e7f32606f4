package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Dossier;
import peakproof.document.Event;
import peakproof.document.Log;
import peakproof.document.Sport;
import peakproof.document.WaterTable;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.Forecast;
import peakproof.measure.RaceProjection;

/** Everything the rules may see of one plan on one day. */
public final class Facts {
  private final Dossier dossier;
  private final Timeline timeline;
  private final Calibration calibration;
  private final Race race;
  private final Athlete athlete;
  private final Goal goal;
  private final RaceDay raceDay;
  private final Block block;
  private final Forecast forecast;
  private final List<CutOff> cutOffs;
  private final List<Gap> gaps;
  private final List<Absence> absences;
  private final List<Adherence> adherence;
  private final @Nullable EasySessions easySessions;
  private final List<HeavyWork> heavyWork;
  private final GoalTests goalTests;
  private final @Nullable RunLegCost runLegCost;
  private final @Nullable Taper taper;
  private final @Nullable Weather weather;
  private final Suit suit;
  private final BikeGoal bikeGoal;
  private final List<Drinking> drinking;
  private final List<RideEffort> rideEfforts;
  private final List<WeekLoad> weekLoads;
  private final List<Illness> illnesses;
  private final List<Comeback> comebacks;
  private final List<WarnedSession> warned;
  private final List<ColdSwim> coldSwims;
  private final @Nullable Sleep sleep;
  private final @Nullable TaperStart taperStart;
  private final HealthFile healthFile;
  private final SuitLimit suitLimit;
  private final List<RaceOnTheWay> racesOnTheWay;
  private final BikeCourse bikeCourse;
  private final @Nullable IndoorRiding indoorRiding;
  private final @Nullable Caffeine caffeine;
  private final Needs needs = new Needs(this);
  private final OpenWeeks openWeeks;
  private final Map<List<LocalDate>, Tallies> tallies = new HashMap<>();

  private Facts(Dossier dossier, LocalDate asOf, Constants constants, WaterTable waterTable) {
    this.dossier = dossier;
    this.calibration = Calibration.of(dossier.plan(), dossier.log(), asOf, constants);
    this.timeline = new Timeline(dossier, asOf, calibration, constants);
    People people = new People(dossier.plan(), calibration, constants);
    this.race = people.race(asOf);
    this.athlete = people.athlete(asOf);
    this.goal = people.goal(timeline);
    this.openWeeks = new OpenWeeks(timeline.weeks().all());
    this.raceDay = people.raceDay();
    this.block = Block.of(people.blockPointer(), timeline.weeks().all());
    this.forecast =
        Forecast.of(
            dossier.plan(),
            RaceProjection.of(dossier.plan(), dossier.log(), asOf, calibration, constants));
    this.cutOffs = CutOff.all(forecast);
    this.gaps = Gap.all(timeline, dossier.plan());
    this.absences = Absence.all(timeline, raced(), gaps);
    Followed followed = timeline.followed();
    this.adherence = Adherence.all(timeline, followed, gaps);
    this.easySessions = EasySessions.of(timeline, followed);
    this.heavyWork = HeavyWork.all(timeline);
    this.goalTests = GoalTests.of(dossier.plan(), timeline, dossier.log() != null);
    this.runLegCost = RunLegCost.of(goal, race, calibration, constants);
    this.taper = Taper.of(timeline);
    this.weather = Weather.of(dossier.plan(), timeline);
    this.suit = Suit.of(dossier.plan(), waterTable, constants);
    this.bikeGoal = BikeGoal.of(dossier.plan(), calibration, constants);
    this.drinking = Drinking.all(dossier.plan(), timeline, race);
    this.rideEfforts = RideEffort.all(timeline);
    this.weekLoads = WeekLoad.all(timeline);
    this.illnesses =
        Symptoms.illnesses(dossier.log(), dossier.plan().athlete().health(), asOf, race.date());
    this.comebacks = Comeback.all(timeline, illnesses);
    this.warned = WarnedSession.all(timeline);
    this.coldSwims = ColdSwim.all(timeline);
    this.sleep = Sleep.of(dossier.log(), timeline);
    this.taperStart = TaperStart.of(dossier.plan(), dossier.log(), timeline);
    this.healthFile = HealthFile.of(dossier.plan().athlete());
    this.suitLimit = SuitLimit.of(dossier.plan().event(), constants);
    this.racesOnTheWay = RaceOnTheWay.all(timeline);
    this.bikeCourse = BikeCourse.of(dossier.plan().event());
    this.indoorRiding = IndoorRiding.of(timeline);
    this.caffeine = Caffeine.of(dossier.plan(), athlete.age());
  }

  /**
   * Gathers the facts.
   *
   * @param asOf the day that parts done from planned
   * @param waterTable by which wetsuits are allowed or not where the event names a rule book
   */
  public static Facts of(
      Dossier dossier, LocalDate asOf, Constants constants, WaterTable waterTable) {
    return new Facts(dossier, asOf, constants, waterTable);
  }

  /**
   * The default as-of date: the last day with a log entry, else the eve of the first written week.
   */
  public static LocalDate lastKnownDay(Dossier dossier) {
    Log log = dossier.log();
    if (log != null && !log.days().isEmpty()) {
      return log.days().lastKey();
    }
    return dossier.plan().weeks().isEmpty()
        ? dossier.plan().event().date().minusDays(1)
        : dossier.plan().weeks().get(0).starts().minusDays(1);
  }

  /** All facts but the windows, which belong to a rule's settings. */
  public List<Fact> all() {
    List<Fact> facts = new ArrayList<>(single());
    facts.addAll(timeline.weeks().all());
    List<Session> sessions = timeline.diary().sessions();
    facts.addAll(sessions);
    facts.addAll(timeline.bricks().all());
    sessions.stream()
        .filter(Swim.class::isInstance)
        .map(Swim.class::cast)
        .forEach(swim -> facts.addAll(swim.sets()));
    facts.addAll(Stretch.all(timeline));
    facts.addAll(gaps);
    facts.addAll(absences);
    facts.addAll(Recovery.all(timeline));
    facts.addAll(PileUp.all(timeline));
    facts.add(RunCourse.of(dossier.plan().event()));
    facts.addAll(Missed.in(dossier.log(), timeline.asOf()));
    List<Pain> pains = Symptoms.pains(dossier.log(), timeline.asOf(), race.date());
    facts.addAll(pains);
    facts.addAll(illnesses);
    facts.addAll(comebacks);
    facts.addAll(PlannedMedicine.all(dossier.plan(), timeline));
    facts.addAll(warned);
    facts.addAll(coldSwims);
    facts.addAll(EnergyCut.all(dossier.plan(), timeline, race));
    facts.addAll(HealthSign.all(illnesses, pains, timeline.asOf()));
    facts.add(healthFile);
    facts.add(suitLimit);
    facts.add(AgeLimit.of(athlete, dossier.plan().event()));
    facts.add(RaceMorning.of(dossier.plan()));
    Stream.of(
            Optional.ofNullable(sleep),
            Optional.ofNullable(taperStart),
            Optional.ofNullable(ParaFile.of(dossier.plan().athlete())))
        .flatMap(Optional::stream)
        .forEach(facts::add);
    facts.addAll(cutOffs);
    facts.addAll(adherence);
    facts.addAll(heavyWork);
    facts.add(suit);
    facts.add(bikeGoal);
    facts.addAll(drinking);
    facts.addAll(rideEfforts);
    facts.addAll(weekLoads);
    facts.addAll(WeekHours.all(timeline, dossier.plan()));
    facts.addAll(ImpliedSpeed.all(timeline, onWheels()));
    Stream.of(
            Optional.ofNullable(easySessions),
            Optional.ofNullable(runLegCost),
            Optional.ofNullable(taper),
            Optional.ofNullable(weather),
            Optional.ofNullable(indoorRiding),
            Optional.ofNullable(caffeine),
            Optional.ofNullable(FirstUse.of(dossier.plan(), timeline)),
            Optional.ofNullable(Travel.of(dossier.plan(), timeline)))
        .flatMap(Optional::stream)
        .forEach(facts::add);
    facts.addAll(racesOnTheWay);
    facts.addAll(EquipmentChange.all(dossier.plan(), timeline));
    facts.addAll(Integrity.mistakes(dossier, timeline));
    facts.addAll(Integrity.missing(dossier, race, calibration));
    return facts;
  }

  /** The days from {@code from} to {@code to} before the race, as a rule's window. */
  public Window window(String rule, String name, double from, double to) {
    LocalDate first = race.date().minusDays((long) from);
    LocalDate last = race.date().minusDays(Math.max(1, (long) to));
    Tallies counts =
        tallies.computeIfAbsent(
            List.of(first, last), days -> new Tallies(new Span(timeline, first, last)));
    return new Window(counts, rule, name);
  }

  /** The facts of which there is one each, which every text may name. */
  public List<Fact> single() {
    return List.of(
        race,
        athlete,
        goal,
        raceDay,
        block,
        goalTests,
        bikeCourse,
        timeline.rehearsals().shoes(),
        Readiness.of(dossier.log(), timeline.asOf(), race.date(), calibration.heartRateUsable()));
  }

  /** What the cards need, as far as this plan has it. */
  public Needs needs() {
    return needs;
  }

  /** The race. */
  public Race race() {
    return race;
  }

  /** The athlete. */
  public Athlete athlete() {
    return athlete;
  }

  /** The goal. */
  public Goal goal() {
    return goal;
  }

  /** What is planned for the day itself. */
  public RaceDay raceDay() {
    return raceDay;
  }

  /** How the weeks are arranged. */
  public Block block() {
    return block;
  }

  /** What turns the plan's words into numbers for this athlete. */
  public Calibration calibration() {
    return calibration;
  }

  /** The time limits that can be set against a projection. */
  public List<CutOff> cutOffs() {
    return cutOffs;
  }

  /** How many time limits the race sets. */
  public long timeLimits() {
    return forecast.cutOffs().size();
  }

  /** What tests and log say of race day. */
  public Forecast forecast() {
    return forecast;
  }

  /** Breaks in the log that are over. */
  List<Gap> gaps() {
    return gaps;
  }

  /** Every computed number, of the plan as a whole, then by week, day and session. */
  public List<Measured> measured() {
    List<Measured> all = new ArrayList<>(PlanMeasures.of(this, dossier, timeline));
    all.addAll(WeekMeasures.of(timeline));
    all.addAll(SessionMeasures.of(timeline));
    return List.copyOf(all);
  }

  /** The block day by day, for whoever lays it out. */
  public Sheet sheet() {
    return Sheet.of(timeline);
  }

  /** The next session to ask about; null when none is written. */
  public @Nullable KeySession nextKeySession() {
    return KeySession.next(timeline);
  }

  /** What of the race was and is to be rehearsed, for whoever lays it out. */
  public List<Rehearsed> rehearsed() {
    return Rehearsed.all(timeline);
  }

  /** All weeks from the first entry to race week. */
  public List<Week> weeks() {
    return timeline.weeks().all();
  }

  /** The weeks that can still be changed or written. */
  public OpenWeeks openWeeks() {
    return openWeeks;
  }

  /** Sessions still to come. */
  Stream<Session> plannedSessions() {
    return timeline.sessions().filter(Session::planned);
  }

  /** The last weeks of the plan against the log; none while too few can be held against it. */
  public List<Adherence> adherence() {
    return adherence;
  }

  /** True when what was done beyond the plan is known for as many weeks as that needs. */
  public boolean knowsExcess() {
    int needed = (int) timeline.constant(Constant.MATCHED_WEEKS);
    return adherence.size() >= needed && adherence.get(needed - 1).leastExcessShare() != null;
  }

  /** The last sessions planned easy, as they were done; null while there are too few. */
  public @Nullable EasySessions easySessions() {
    return easySessions;
  }

  /** The intensity of four build weeks, for each such week that can be changed. */
  public List<HeavyWork> heavyWork() {
    return heavyWork;
  }

  /** The races before the one the plan leads to. */
  List<RaceOnTheWay> racesOnTheWay() {
    return racesOnTheWay;
  }

  /** The bike leg of the race. */
  BikeCourse bikeCourse() {
    return bikeCourse;
  }

  /** The riding of the peak weeks by place; null once none of it can be changed. */
  @Nullable IndoorRiding indoorRiding() {
    return indoorRiding;
  }

  /** Caffeine planned for the race; null when none is. */
  @Nullable Caffeine caffeine() {
    return caffeine;
  }

  /** True when the event says whether drafting is allowed. */
  boolean draftingSaid() {
    return dossier.plan().event().bike().drafting() != null;
  }

  /** The goal beside races and tests. */
  public GoalTests goalTests() {
    return goalTests;
  }

  /** The goal of the run against the same run fresh; null when that cannot be told. */
  public @Nullable RunLegCost runLegCost() {
    return runLegCost;
  }

  /** The taper; null once none of it can be changed. */
  public @Nullable Taper taper() {
    return taper;
  }

  /** The heat of race day; null when the event does not tell. */
  public @Nullable Weather weather() {
    return weather;
  }

  /** The wetsuit of race day against the rules. */
  public Suit suit() {
    return suit;
  }

  /** The goal of the bike leg in watts. */
  public BikeGoal bikeGoal() {
    return bikeGoal;
  }

  /** What the rides that can be changed, and those before them, are held at. */
  public List<RideEffort> rideEfforts() {
    return rideEfforts;
  }

  /** The load of each week. */
  public List<WeekLoad> weekLoads() {
    return weekLoads;
  }

  /** True for a race short enough to need no plan for eating and drinking. */
  boolean fuelsItself() {
    Double minutes = race.expectedMinutes();
    return minutes != null && minutes <= timeline.constant(Constant.CARBOHYDRATE_MUCH_FROM);
  }

  /** Sessions on days with an official warning. */
  List<WarnedSession> warned() {
    return warned;
  }

  /** Swims to come in cold water. */
  List<ColdSwim> coldSwims() {
    return coldSwims;
  }

  /** True when every swim to come in open water says how warm its water is. */
  boolean saysWater() {
    return plannedSessions()
        .allMatch(s -> !(s instanceof Swim swim) || !swim.openWater() || swim.celsius() != null);
  }

  /** The last seven nights; null without a recent one. */
  @Nullable Sleep sleep() {
    return sleep;
  }

  /** How the athlete comes to the taper; null away from its start. */
  @Nullable TaperStart taperStart() {
    return taperStart;
  }

  /** True when it is known on which day the taper starts. */
  boolean knowsTaperStart() {
    return TaperStart.starts(timeline) != null;
  }

  /** What the plan's health entries say. */
  HealthFile healthFile() {
    return healthFile;
  }

  /** The race's water beside the limit for wetsuits. */
  SuitLimit suitLimit() {
    return suitLimit;
  }

  /** True when the event says how young one may be. */
  boolean saysMinimumAge() {
    return dossier.plan().event().minimumAge() != null;
  }

  /** True when the first week back can be told after every illness after which that is asked. */
  boolean knowsFirstWeeks() {
    return comebacks.stream()
        .filter(comeback -> !comeback.firstWeekKnown())
        .noneMatch(
            comeback ->
                illnesses.stream()
                    .anyMatch(
                        illness ->
                            illness.from().equals(comeback.from())
                                && illness.viral()
                                && !illness.cleared()));
  }

  /** True when the coach says how many hours the athlete has a week, or on a weekday. */
  public boolean saysAvailable() {
    peakproof.document.Athlete.Available available = dossier.plan().athlete().available();
    return available != null
        && (available.weekSeconds() != null || available.weekdaySeconds() != null);
  }

  /** Days in a row of peak weeks without one of the three sports. */
  List<Absence> absences() {
    return absences;
  }

  /** The run course of the race. */
  RunCourse runCourse() {
    return RunCourse.of(dossier.plan().event());
  }

  /** Sports of the race; a leg that is not given is none when others are. */
  private Set<Sport> raced() {
    Event.Legs legs = dossier.plan().event().legs();
    Map<Sport, @Nullable Double> lengths = new EnumMap<>(Sport.class);
    lengths.put(Sport.SWIM, legs.swim());
    lengths.put(Sport.BIKE, legs.bike());
    lengths.put(Sport.RUN, legs.run());
    boolean none = lengths.values().stream().allMatch(Objects::isNull);
    Set<Sport> raced = EnumSet.noneOf(Sport.class);
    lengths.forEach(
        (sport, metres) -> {
          if ((none || metres != null) && !(sport == Sport.RUN && onWheels())) {
            raced.add(sport);
          }
        });
    return raced;
  }

  private boolean onWheels() {
    peakproof.document.Athlete.Para para = dossier.plan().athlete().para();
    return para != null
        && ("wheelchair".equals(para.device()) || "handcycle".equals(para.device()));
  }

  /** Runs still to come. */
  Stream<Run> plannedRuns() {
    return plannedSessions().filter(Run.class::isInstance).map(Run.class::cast);
  }

  /** True with a log, or with what the coach states in its place. */
  public boolean knowsThePast() {
    return dossier.log() != null || timeline.hasLately();
  }

  /** The last day with a log entry, or null without a log. */
  public @Nullable LocalDate logEnds() {
    Log log = dossier.log();
    return log == null || log.days().isEmpty() ? null : log.days().lastKey();
  }
}
