package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Dossier;
import peakproof.document.Log;
import peakproof.document.WaterTable;
import peakproof.measure.Calibration;
import peakproof.measure.Constants;
import peakproof.measure.Forecast;

/** Everything the rules may see of one plan on one day. */
public final class Facts {
  private final Dossier dossier;
  private final Timeline timeline;
  private final RaceFacts ofRace;
  private final TrainingFacts training;
  private final HealthFacts health;
  private final Needs needs = new Needs(this);
  private final OpenWeeks openWeeks;
  private final Map<List<LocalDate>, Tallies> tallies = new HashMap<>();

  private Facts(Dossier dossier, LocalDate asOf, Constants constants, WaterTable waterTable) {
    this.dossier = dossier;
    this.timeline =
        new Timeline(
            dossier,
            asOf,
            Calibration.of(dossier.plan(), dossier.log(), asOf, constants),
            constants);
    this.openWeeks = new OpenWeeks(weeks());
    this.ofRace = new RaceFacts(dossier, timeline, waterTable);
    this.training = new TrainingFacts(dossier, timeline, ofRace);
    this.health = new HealthFacts(dossier, timeline, ofRace.race());
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
    Gathered facts = new Gathered();
    facts.addAll(single());
    training.addTo(facts);
    ofRace.addTo(facts);
    health.addTo(facts);
    facts.addAll(Integrity.mistakes(dossier, timeline));
    facts.addAll(Integrity.missing(dossier, race(), calibration()));
    return facts.all();
  }

  /** The facts of which there is one each, which every text may name. */
  public List<Fact> single() {
    List<Fact> single = new ArrayList<>(ofRace.single());
    single.add(training.goalTests());
    single.add(health.readiness());
    return single;
  }

  /** The days from {@code from} to {@code to} before the race, as a rule's window. */
  public Window window(String rule, String name, double from, double to) {
    LocalDate first = ofRace.date().minusDays((long) from);
    LocalDate last = ofRace.date().minusDays(Math.max(1, (long) to));
    Tallies counts =
        tallies.computeIfAbsent(
            List.of(first, last), days -> new Tallies(new Span(timeline, first, last)));
    return new Window(counts, rule, name);
  }

  /** What the cards need, as far as this plan has it. */
  public Needs needs() {
    return needs;
  }

  /** The weeks that can still be changed or written. */
  public OpenWeeks openWeeks() {
    return openWeeks;
  }

  /** All weeks from the first entry to race week. */
  public List<Week> weeks() {
    return timeline.weeks().all();
  }

  /** The race. */
  public Race race() {
    return ofRace.race();
  }

  /** The athlete. */
  public Athlete athlete() {
    return ofRace.athlete();
  }

  /** The goal. */
  public Goal goal() {
    return ofRace.goal();
  }

  /** What is planned for the day itself. */
  public RaceDay raceDay() {
    return ofRace.day();
  }

  /** How the weeks are arranged. */
  public Block block() {
    return ofRace.block();
  }

  /** What tests and log say of race day. */
  public Forecast forecast() {
    return ofRace.forecast();
  }

  /** What turns the plan's words into numbers for this athlete. */
  public Calibration calibration() {
    return timeline.calibration();
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

  /** The last day with a log entry, or null without a log. */
  public @Nullable LocalDate logEnds() {
    Log log = dossier.log();
    return log == null || log.days().isEmpty() ? null : log.days().lastKey();
  }

  /** True with a log, or with what the coach states in its place. */
  boolean knowsThePast() {
    return dossier.log() != null || timeline.hasLately();
  }

  RaceFacts ofRace() {
    return ofRace;
  }

  TrainingFacts training() {
    return training;
  }

  HealthFacts health() {
    return health;
  }
}
