package peakproof.fact;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Dossier;
import peakproof.document.Plan;
import peakproof.measure.Constant;

/** What was trained and is to be, and what that comes to by weeks and over the block. */
final class TrainingFacts {
  private final Plan plan;
  private final Timeline timeline;
  private final boolean onWheels;
  private final List<Gap> gaps;
  private final List<Absence> absences;
  private final List<Adherence> adherence;
  private final @Nullable EasySessions easySessions;
  private final List<HeavyWork> heavyWork;
  private final GoalTests goalTests;
  private final @Nullable Taper taper;
  private final List<RideEffort> rideEfforts;
  private final List<WeekLoad> weekLoads;
  private final List<RaceOnTheWay> racesOnTheWay;
  private final @Nullable IndoorRiding indoorRiding;

  TrainingFacts(Dossier dossier, Timeline timeline, RaceFacts race) {
    this.plan = dossier.plan();
    this.timeline = timeline;
    this.onWheels = race.onWheels();
    this.gaps = Gap.all(timeline, plan);
    this.absences = Absence.all(timeline, race.sports(), gaps);
    this.adherence = Adherence.all(timeline, timeline.followed(), gaps);
    this.easySessions = EasySessions.of(timeline, timeline.followed());
    this.heavyWork = HeavyWork.all(timeline);
    this.goalTests = GoalTests.of(plan, timeline, dossier.log() != null);
    this.taper = Taper.of(timeline);
    this.rideEfforts = RideEffort.all(timeline);
    this.weekLoads = WeekLoad.all(timeline);
    this.racesOnTheWay = RaceOnTheWay.all(timeline);
    this.indoorRiding = IndoorRiding.of(timeline);
  }

  void addTo(Gathered facts) {
    List<Session> sessions = timeline.diary().sessions();
    facts.addAll(timeline.weeks().all());
    facts.addAll(sessions);
    facts.addAll(timeline.bricks().all());
    for (Session session : sessions) {
      if (session instanceof Swim swim) {
        facts.addAll(swim.sets());
      }
    }
    facts.addAll(Stretch.all(timeline));
    facts.addAll(gaps);
    facts.addAll(absences);
    facts.addAll(Recovery.all(timeline));
    facts.addAll(PileUp.all(timeline));
    facts.addAll(adherence);
    facts.addAll(heavyWork);
    facts.addAll(rideEfforts);
    facts.addAll(weekLoads);
    facts.addAll(WeekHours.all(timeline, plan));
    facts.addAll(ImpliedSpeed.all(timeline, onWheels));
    facts.add(easySessions);
    facts.add(taper);
    facts.add(indoorRiding);
    facts.addAll(racesOnTheWay);
    facts.addAll(EquipmentChange.all(plan, timeline));
  }

  /** Breaks in the log that are over. */
  List<Gap> gaps() {
    return gaps;
  }

  /** Days in a row of peak weeks without one of the three sports. */
  List<Absence> absences() {
    return absences;
  }

  /** The last weeks of the plan against the log; none while too few can be held against it. */
  List<Adherence> adherence() {
    return adherence;
  }

  /** True when what was done beyond the plan is known for as many weeks as that needs. */
  boolean knowsExcess() {
    int needed = (int) timeline.constant(Constant.MATCHED_WEEKS);
    return adherence.size() >= needed && adherence.get(needed - 1).leastExcessShare() != null;
  }

  /** The last sessions planned easy, as they were done; null while there are too few. */
  @Nullable EasySessions easySessions() {
    return easySessions;
  }

  /** The intensity of four build weeks, for each such week that can be changed. */
  List<HeavyWork> heavyWork() {
    return heavyWork;
  }

  /** The goal beside races and tests. */
  GoalTests goalTests() {
    return goalTests;
  }

  /** The taper; null once none of it can be changed. */
  @Nullable Taper taper() {
    return taper;
  }

  /** What the rides that can be changed, and those before them, are held at. */
  List<RideEffort> rideEfforts() {
    return rideEfforts;
  }

  /** The load of each week. */
  List<WeekLoad> weekLoads() {
    return weekLoads;
  }

  /** The races before the one the plan leads to. */
  List<RaceOnTheWay> racesOnTheWay() {
    return racesOnTheWay;
  }

  /** The riding of the peak weeks by place; null once none of it can be changed. */
  @Nullable IndoorRiding indoorRiding() {
    return indoorRiding;
  }

  /** Sessions still to come. */
  Stream<Session> planned() {
    return timeline.sessions().filter(Session::planned);
  }

  /** Runs still to come. */
  Stream<Run> plannedRuns() {
    return planned().filter(Run.class::isInstance).map(Run.class::cast);
  }

  /** True when the coach says how many hours the athlete has a week, or on a weekday. */
  boolean saysAvailable() {
    Athlete.Available available = plan.athlete().available();
    return available != null
        && (available.weekSeconds() != null || available.weekdaySeconds() != null);
  }
}
