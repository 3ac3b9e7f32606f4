package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.measure.Constant;

/**
 * The days a rule looks at, counted back from race day, done and planned training together. One for
 * each setting of a card written {@code D-56..D-15}; both ends count. Counts and longest are of
 * what is known: lower bounds while {@link #doubts} has anything to say.
 */
public final class Window implements Fact {
  private final String rule;
  private final String name;
  private final LocalDate first;
  private final LocalDate last;
  private final Timeline timeline;
  private final List<Day> days;
  private final Tallies tallies;

  Window(Timeline timeline, String rule, String name, LocalDate first, LocalDate last) {
    this.timeline = timeline;
    this.rule = rule;
    this.name = name;
    this.first = first;
    this.last = last;
    this.days = timeline.between(first, last);
    this.tallies = new Tallies();
    tallySwims(of(Swim.class));
    tallyRides(of(Ride.class));
    tallies.put(
        "heatDays",
        () ->
            Tally.count(
                days,
                day -> day.heat(timeline.raceAir()),
                "heat or air of the rides and runs in the log"));
    tallyRuns(of(Run.class), timeline.bricks().stream().filter(b -> holds(b.date())).toList());
    tallyRehearsals(of(Session.class), of(Run.class), timeline.rehearsals());
  }

  private Window(Window counted, String rule, String name) {
    this.timeline = counted.timeline;
    this.rule = rule;
    this.name = name;
    this.first = counted.first;
    this.last = counted.last;
    this.days = counted.days;
    this.tallies = counted.tallies;
  }

  /** The same days for another setting: many rules look at the same, and counting takes time. */
  Window as(String anotherRule, String itsName) {
    return new Window(this, anotherRule, itsName);
  }

  private void tallySwims(List<Swim> swims) {
    Skills skills = timeline.skills();
    Double stated = statesLately() ? timeline.lately().longestSwimMetres() : null;
    tallies.put(
        "openWaterSwims", () -> statedOpenWater(Tally.count(swims, skills::openWater, WHERE)));
    tallies.put("suitlessSwims", () -> Tally.count(swims, skills::suitless, WHERE));
    tallies.put(
        "wetsuitSwims", () -> Tally.count(swims, skills::wetsuit, "log kit of open-water swims"));
    tallies.put(
        "longestWetsuitSwimMinutes",
        () ->
            Tally.longest(
                swims.stream().filter(Swim::wetsuit).toList(), Swim::minutes, "time of the swims"));
    tallies.put(
        "longestSwimMetres",
        () ->
            Tally.longest(swims, Swim::continuousMetres, "set lines of the swims in the log")
                .orStated(stated));
    tallies.put(
        "longestRepetitionMetres",
        () ->
            Tally.longest(
                swims, Swim::longestRepetitionMetres, "set lines of the swims in the log"));
    tallies.put(
        "goalPaceSwimMetres",
        () -> Tally.longest(swims, Swim::goalPaceMetres, "set lines of the swims in the log"));
    tallies.put("sightingSwims", () -> skills.practised(swims, "sighting"));
    tallies.put("bothSidesSwims", () -> skills.practised(swims, "both-sides"));
    tallies.put("fastStartSwims", () -> skills.practised(swims, "fast-start"));
    tallies.put("briskSwims", () -> Tally.count(swims, Swim::brisk, BRISK));
    tallies.put(
        "swimsInCompany", () -> Tally.count(swims, skills::inCompany, "company of the swims"));
  }

  private void tallyRides(List<Ride> rides) {
    List<Ride> longRides = rides.stream().filter(Ride::longRide).toList();
    Skills skills = timeline.skills();
    Double stated = statesLately() ? minutes(timeline.lately().longestRideSeconds()) : null;
    tallies.put(
        "longestRideMinutes",
        () -> Tally.longest(rides, Ride::minutes, "time of the rides").orStated(stated));
    tallies.put(
        "longRideEffortShare",
        () ->
            Tally.longest(
                longRides, Ride::raceEffortShare, "heart rate or power of the long rides"));
    tallies.put(
        "longestRaceClothingRideMinutes",
        () -> Tally.longest(rides, skills::raceClothingMinutes, "kit of the rides"));
    tallies.put("raceBikeRides", () -> Tally.count(rides, skills::raceBike, "kit of the rides"));
    tallies.put("longRides", () -> new Tally(longRides.size(), null));
    tallies.put("briskRides", () -> Tally.count(rides, Ride::brisk, BRISK));
    tallies.put("aeroShare", () -> skills.aeroShare(longRides));
    tallies.put(
        "longRideClimbRate",
        () -> Tally.longest(longRides, Ride::climbRate, "climb and distance of the long rides"));
    tallies.put("groupShare", () -> new Tally(groupShare(longRides), null));
  }

  private void tallyRuns(List<Run> runs, List<Brick> bricks) {
    Double stated = statesLately() ? minutes(timeline.lately().longestRunSeconds()) : null;
    tallies.put(
        "longestRunMinutes",
        () -> Tally.longest(runs, Run::minutes, "time of the runs").orStated(stated));
    tallies.put("longestRunKm", () -> Tally.longest(runs, Run::km, "distance of the runs"));
    tallies.put(
        "racePaceRuns",
        () -> Tally.count(runs, Run::atRacePace, "distance of the runs in the log"));
    tallies.put("fastRuns", () -> Tally.count(runs, Run::fast, "set lines of the runs in the log"));
    tallies.put(
        "steepestRunDescent",
        () ->
            Tally.longest(runs, timeline.skills()::descentPerKm, "descent of the runs in the log"));
    tallies.put("bricks", () -> new Tally(bricks.size(), null));
    tallies.put(
        "offBikeShare",
        () -> new Tally(runs.isEmpty() ? 0 : (double) bricks.size() / runs.size(), null));
  }

  private void tallyRehearsals(List<Session> sessions, List<Run> runs, Rehearsals rehearsals) {
    tallies.put("raceShoeRuns", () -> sinceLogged(rehearsals.shoes().runs(runs)));
    tallies.put("raceShoeKm", () -> sinceLogged(rehearsals.shoes().km(runs)));
    tallies.put(
        "fuelledLongSessions", () -> sinceLogged(rehearsals.fuelling().longSessions(sessions)));
    tallies.put("fuelledRuns", () -> sinceLogged(rehearsals.fuelling().runs(runs)));
    tallies.put("dressRehearsals", () -> sinceLogged(rehearsals.dress().on(days)));
    tallies.put("transitionSessions", () -> sinceLogged(timeline.skills().transitions(sessions)));
  }

  /** What was rehearsed in weeks of which nothing at all is known cannot be called missing. */
  private Tally sinceLogged(Tally counted) {
    List<Day> past = days.stream().filter(day -> day.date().isBefore(timeline.asOf())).toList();
    boolean unlogged =
        !past.isEmpty() && past.stream().allMatch(day -> day.known() == Known.UNKNOWN);
    return unlogged
        ? new Tally(counted.value(), "a log of all days since " + Words.day(first))
        : counted;
  }

  private static double groupShare(List<Ride> longRides) {
    double all = minutes(longRides);
    return all > 0 ? minutes(longRides.stream().filter(Ride::inGroup).toList()) / all : 0;
  }

  /** Minutes of the sessions whose length is known. */
  private static double minutes(List<? extends Session> sessions) {
    return Exact.of(
        sessions.stream()
            .map(Session::minutes)
            .filter(Objects::nonNull)
            .mapToDouble(Double::doubleValue)
            .sum());
  }

  private static final String WHERE = "where of the swims in the log";
  private static final String BRISK = "set lines of the swims and rides in the log";

  private static @Nullable Double minutes(@Nullable Double seconds) {
    return seconds == null ? null : (Double) (seconds / 60);
  }

  /** The rule whose setting it is. */
  public String rule() {
    return rule;
  }

  /** The setting's name, {@code window} for most. */
  public String name() {
    return name;
  }

  /** First and last day in words: {@code 9 May to 19 Jun}. */
  public String label() {
    return Words.day(first) + " to " + Words.day(last);
  }

  /** The first day. */
  public LocalDate first() {
    return first;
  }

  /** The last day, by which the thing has to be done. */
  public LocalDate last() {
    return last;
  }

  private boolean holds(LocalDate date) {
    return !date.isBefore(first) && !date.isAfter(last);
  }

  /** True while the coach can still change a day of it. */
  public boolean changeable() {
    return !last.isBefore(timeline.firstChangeable());
  }

  /** True when its weeks are written and enough of its past days are known to count in it. */
  public boolean known() {
    return doubts(Set.of()).isEmpty();
  }

  /** Swims in open water. */
  public double openWaterSwims() {
    return value("openWaterSwims");
  }

  /** Swims in open water without a wetsuit. */
  public double suitlessSwims() {
    return value("suitlessSwims");
  }

  /** Swims in a wetsuit. */
  public double wetsuitSwims() {
    return value("wetsuitSwims");
  }

  /** Minutes of the longest swim in a wetsuit. */
  public double longestWetsuitSwimMinutes() {
    return value("longestWetsuitSwimMinutes");
  }

  /** Metres of the longest swim without a real rest. */
  public double longestSwimMetres() {
    return value("longestSwimMetres");
  }

  /** Metres of the longest single repetition in the water. */
  public double longestRepetitionMetres() {
    return value("longestRepetitionMetres");
  }

  /** Most metres at goal pace in one swim. */
  public double goalPaceSwimMetres() {
    return value("goalPaceSwimMetres");
  }

  /** Swims with sighting practice. */
  public double sightingSwims() {
    return value("sightingSwims");
  }

  /** Swims with breathing to both sides. */
  public double bothSidesSwims() {
    return value("bothSidesSwims");
  }

  /** Swims with a fast start. */
  public double fastStartSwims() {
    return value("fastStartSwims");
  }

  /** Swims in a group or supervised. */
  public double swimsInCompany() {
    return value("swimsInCompany");
  }

  /** Swims with something at race effort or harder than moderate. */
  public double briskSwims() {
    return value("briskSwims");
  }

  /** Rides with something at race effort or harder than moderate. */
  public double briskRides() {
    return value("briskRides");
  }

  /** Minutes of the longest ride. */
  public double longestRideMinutes() {
    return value("longestRideMinutes");
  }

  /** Long rides. */
  public double longRides() {
    return value("longRides");
  }

  /** The largest share of a long ride spent at race effort. */
  public double longRideEffortShare() {
    return value("longRideEffortShare");
  }

  /** Minutes of the longest ride in race clothing. */
  public double longestRaceClothingRideMinutes() {
    return value("longestRaceClothingRideMinutes");
  }

  /** Rides on the race bike. */
  public double raceBikeRides() {
    return value("raceBikeRides");
  }

  /** Share of all long-ride time in race position. */
  public double aeroShare() {
    return value("aeroShare");
  }

  /** Minutes of the longest run. */
  public double longestRunMinutes() {
    return value("longestRunMinutes");
  }

  /** Kilometres of the longest run. */
  public double longestRunKm() {
    return value("longestRunKm");
  }

  /** Runs with ten minutes or more at goal pace. */
  public double racePaceRuns() {
    return value("racePaceRuns");
  }

  /** Runs with something faster than easy running and the race effort of a long race. */
  public double fastRuns() {
    return value("fastRuns");
  }

  /** Runs still to come. */
  public double runsToCome() {
    return of(Run.class).stream().filter(Session::planned).count();
  }

  /** Metres down for each kilometre of the run that goes down most. */
  public double steepestRunDescent() {
    return value("steepestRunDescent");
  }

  /** Runs straight after a ride. */
  public double bricks() {
    return value("bricks");
  }

  /** Runs straight after a ride as a share of all runs. */
  public double offBikeShare() {
    return value("offBikeShare");
  }

  /** Days with training in heat, or in air as warm as the race's. */
  public double heatDays() {
    return value("heatDays");
  }

  /** Metres of climb for each kilometre of the hilliest long ride. */
  public double longRideClimbRate() {
    return value("longRideClimbRate");
  }

  /** Share of long-ride time in a group; a ride that does not say counts as alone. */
  public double groupShare() {
    return value("groupShare");
  }

  /** Runs in the shoes of the race, since the newest change of shoes. */
  public double raceShoeRuns() {
    return value("raceShoeRuns");
  }

  /** Kilometres run in the shoes of the race, since the newest change of shoes. */
  public double raceShoeKm() {
    return value("raceShoeKm");
  }

  /** Long rides and runs fuelled at the rate and with the products of the race. */
  public double fuelledLongSessions() {
    return value("fuelledLongSessions");
  }

  /** Runs fuelled at the rate and with the products of the race. */
  public double fuelledRuns() {
    return value("fuelledRuns");
  }

  /** Days that are the race in small, in its kit. */
  public double dressRehearsals() {
    return value("dressRehearsals");
  }

  /** Sessions with a change from one sport to the next. */
  public double transitionSessions() {
    return value("transitionSessions");
  }

  /** Minutes of swimming, cycling and running, as far as they are known. */
  public double trainingMinutes() {
    return minutes(of(Session.class).stream().filter(Session::endurance).toList());
  }

  /** Severe minutes of the sessions still to come. */
  public double severeMinutes() {
    return Exact.of(
        of(Session.class).stream()
            .filter(Session::planned)
            .mapToDouble(Session::severeMinutes)
            .sum());
  }

  /** True when a swim, ride or run of it is still to come. */
  public boolean trainingAhead() {
    return of(Session.class).stream().anyMatch(s -> s.planned() && s.endurance());
  }

  /** Rest days. */
  public double restDays() {
    return days.stream().filter(Day::rest).count();
  }

  /** How much less training a day than in the weeks before the taper; unknown without those. */
  public @Nullable Double reduction() {
    return timeline.weeks().reduction(days);
  }

  private double value(String field) {
    return Objects.requireNonNull(tallies.get(field)).value();
  }

  private boolean statesLately() {
    return timeline.hasLately() && first.isBefore(timeline.asOf());
  }

  private Tally statedOpenWater(Tally counted) {
    LocalDate stated = timeline.hasLately() ? timeline.lately().openWater() : null;
    return stated != null && holds(stated)
        ? new Tally(Math.max(counted.value(), 1), counted.doubt())
        : counted;
  }

  private <S extends Session> List<S> of(Class<S> kind) {
    return days.stream()
        .flatMap(day -> day.sessions().stream())
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }

  /** True when what is found rests on what the coach states in place of a log. */
  @Override
  public boolean estimated() {
    return statesLately() && days.stream().anyMatch(day -> day.known() == Known.UNKNOWN);
  }

  /**
   * True for a window that only brings evidence from further back, such as {@code season}: what it
   * does not know is no doubt. The windows a rule judges are named {@code window} or end so.
   */
  public boolean evidenceOnly() {
    return !name.endsWith("window");
  }

  /**
   * The entries that are missing before something can be called absent: days that are unknown or
   * not written, and sessions that do not say.
   *
   * @param fields the fields of this fact that the rule rests on
   */
  public List<String> doubts(Set<String> fields) {
    boolean stated = !fields.isEmpty() && STATED.containsAll(fields) && statesLately();
    List<String> doubts = new ArrayList<>(notWritten());
    long unknown = days.stream().filter(day -> day.known() == Known.UNKNOWN).count();
    if (!stated && unknown > days.size() * (1 - timeline.constant(Constant.COVERAGE_LEAST))) {
      doubts.add("a log of all days since " + Words.day(first));
    } else {
      LocalDate since = timeline.unloggedSince(first, last);
      if (since != null) {
        doubts.add("a log of the days since " + Words.day(since));
      }
    }
    for (String field : fields) {
      Tally tally = tallies.get(field);
      if (tally != null && tally.doubt() != null) {
        doubts.add(tally.doubt());
      }
    }
    return doubts;
  }

  /** What is missing for a field that can be unknown; empty when it is known. */
  public List<String> unknown(String field) {
    return field.equals("reduction") && reduction() == null && notWritten().isEmpty()
        ? List.of("a log of the weeks before the taper")
        : List.of();
  }

  /** The weeks of it that are not written yet, in words. */
  public List<String> notWritten() {
    Set<String> missing = new LinkedHashSet<>();
    for (Day day : days) {
      if (day.known() == Known.UNWRITTEN) {
        missing.add(Timeline.notWritten(Week.monday(day.date())));
      }
    }
    return List.copyOf(missing);
  }

  /** What {@code lately} can stand in for. */
  private static final Set<String> STATED =
      Set.of("longestRideMinutes", "longestRunMinutes", "longestSwimMetres", "openWaterSwims");

  @Override
  public @Nullable LocalDate bites() {
    return last;
  }

  @Override
  public List<Where> where() {
    return List.of(timeline.weeks().lastWritten(first, last));
  }
}
