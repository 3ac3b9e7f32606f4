package peakproof.fact;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Dossier;
import peakproof.document.Event;
import peakproof.document.Plan;
import peakproof.document.Sport;
import peakproof.document.WaterTable;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.Forecast;
import peakproof.measure.RaceProjection;

/** The race, who races it, for what goal, and what is laid out for the day. */
final class RaceFacts {
  private final Plan plan;
  private final Timeline timeline;
  private final Race race;
  private final Athlete athlete;
  private final Goal goal;
  private final RaceDay day;
  private final Block block;
  private final Forecast forecast;
  private final List<CutOff> cutOffs;
  private final @Nullable RunLegCost runLegCost;
  private final @Nullable Weather weather;
  private final Suit suit;
  private final SuitLimit suitLimit;
  private final BikeGoal bikeGoal;
  private final BikeCourse bikeCourse;
  private final @Nullable Caffeine caffeine;

  RaceFacts(Dossier dossier, Timeline timeline, WaterTable waterTable) {
    Calibration calibration = timeline.calibration();
    Constants constants = timeline.constants();
    this.plan = dossier.plan();
    this.timeline = timeline;
    People people = new People(plan, calibration, constants);
    this.race = people.race(timeline.asOf());
    this.athlete = people.athlete(timeline.asOf());
    this.goal = people.goal(timeline);
    this.day = people.raceDay();
    this.block = Block.of(people.blockPointer(), timeline.weeks().all());
    this.forecast =
        Forecast.of(
            plan, RaceProjection.of(plan, dossier.log(), timeline.asOf(), calibration, constants));
    this.cutOffs = CutOff.all(forecast);
    this.runLegCost = RunLegCost.of(goal, race, calibration, constants);
    this.weather = Weather.of(plan, timeline);
    this.suit = Suit.of(plan, waterTable, constants);
    this.suitLimit = SuitLimit.of(plan.event(), constants);
    this.bikeGoal = BikeGoal.of(plan, calibration, constants);
    this.bikeCourse = BikeCourse.of(plan.event());
    this.caffeine = Caffeine.of(plan, athlete.age());
  }

  /** Those of which there is one each. */
  List<Fact> single() {
    return List.of(race, athlete, goal, day, block, bikeCourse, timeline.rehearsals().shoes());
  }

  /** All others. */
  void addTo(Gathered facts) {
    facts.add(runCourse());
    facts.add(suit);
    facts.add(suitLimit);
    facts.add(AgeLimit.of(athlete, plan.event()));
    facts.add(RaceMorning.of(plan));
    facts.addAll(cutOffs);
    facts.add(bikeGoal);
    facts.addAll(Drinking.all(plan, timeline, race));
    facts.add(runLegCost);
    facts.add(weather);
    facts.add(caffeine);
    facts.add(FirstUse.of(plan, timeline));
    facts.add(Travel.of(plan, timeline));
  }

  /** The race. */
  Race race() {
    return race;
  }

  LocalDate date() {
    return race.date();
  }

  /** The athlete. */
  Athlete athlete() {
    return athlete;
  }

  /** The goal. */
  Goal goal() {
    return goal;
  }

  /** What is planned for the day itself. */
  RaceDay day() {
    return day;
  }

  /** How the weeks are arranged. */
  Block block() {
    return block;
  }

  /** What tests and log say of race day. */
  Forecast forecast() {
    return forecast;
  }

  /** True when the race sets time limits. */
  boolean hasTimeLimits() {
    return !forecast.cutOffs().isEmpty();
  }

  /** True when some time limit can be set against a projection, or there is none. */
  boolean projectsTimeLimits() {
    return !hasTimeLimits() || !cutOffs.isEmpty();
  }

  /** True when every time limit can be set against a projection. */
  boolean projectsAllTimeLimits() {
    return forecast.cutOffs().size() == cutOffs.size();
  }

  /** The goal of the run against the same run fresh; null when that cannot be told. */
  @Nullable RunLegCost runLegCost() {
    return runLegCost;
  }

  /** The heat of race day; null when the event does not tell. */
  @Nullable Weather weather() {
    return weather;
  }

  /** The wetsuit of race day against the rules. */
  Suit suit() {
    return suit;
  }

  /** The race's water beside the limit for wetsuits. */
  SuitLimit suitLimit() {
    return suitLimit;
  }

  /** The goal of the bike leg in watts. */
  BikeGoal bikeGoal() {
    return bikeGoal;
  }

  /** The bike leg of the race. */
  BikeCourse bikeCourse() {
    return bikeCourse;
  }

  /** The run course of the race. */
  RunCourse runCourse() {
    return RunCourse.of(plan.event());
  }

  /** Caffeine planned for the race; null when none is. */
  @Nullable Caffeine caffeine() {
    return caffeine;
  }

  /** True for a race short enough to need no plan for eating and drinking. */
  boolean fuelsItself() {
    Double minutes = race.expectedMinutes();
    return minutes != null && minutes <= timeline.constant(Constant.CARBOHYDRATE_MUCH_FROM);
  }

  /** True when the event says whether drafting is allowed. */
  boolean saysDrafting() {
    return plan.event().bike().drafting() != null;
  }

  /** True when the event says how young one may be. */
  boolean saysMinimumAge() {
    return plan.event().minimumAge() != null;
  }

  /** Sports of the race; a leg that is not given is none when others are. */
  Set<Sport> sports() {
    Event.Legs legs = plan.event().legs();
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

  /** True for an athlete who covers the run leg on wheels. */
  boolean onWheels() {
    peakproof.document.Athlete.Para para = plan.athlete().para();
    return para != null
        && ("wheelchair".equals(para.device()) || "handcycle".equals(para.device()));
  }
}
