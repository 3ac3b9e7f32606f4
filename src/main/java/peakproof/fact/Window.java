package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The days a rule looks at, counted back from race day, done and planned training together. One for
 * each setting of a card written {@code D-56..D-15}; both ends count. Counts and longest are of
 * what is known: lower bounds while {@link #doubts} has anything to say.
 */
public final class Window implements Fact {
  private final String rule;
  private final String name;
  private final Span span;
  private final Tallies tallies;

  /** Many settings look at the same days, whose counts they share. */
  Window(Tallies tallies, String rule, String name) {
    this.span = tallies.span();
    this.tallies = tallies;
    this.rule = rule;
    this.name = name;
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
    return Words.day(span.first) + " to " + Words.day(span.last);
  }

  /** The first day. */
  public LocalDate first() {
    return span.first;
  }

  /** The last day, by which the thing has to be done. */
  public LocalDate last() {
    return span.last;
  }

  /** True while the coach can still change a day of it. */
  public boolean changeable() {
    return !span.last.isBefore(span.timeline.firstChangeable());
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
    return span.runs.stream().filter(Session::planned).count();
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
    return Tally.minutes(span.sessions.stream().filter(Session::endurance).toList());
  }

  /** Severe minutes of the sessions still to come. */
  public double severeMinutes() {
    return Exact.of(
        span.sessions.stream().filter(Session::planned).mapToDouble(Session::severeMinutes).sum());
  }

  /** True when a swim, ride or run of it is still to come. */
  public boolean trainingAhead() {
    return span.sessions.stream().anyMatch(s -> s.planned() && s.endurance());
  }

  /** Rest days. */
  public double restDays() {
    return span.days.stream().filter(Day::rest).count();
  }

  /** How much less training a day than in the weeks before the taper; unknown without those. */
  public @Nullable Double reduction() {
    return span.timeline.weeks().reduction(span.days);
  }

  private double value(String field) {
    return Objects.requireNonNull(tallies.get(field)).value();
  }

  /** True when what is found rests on what the coach states in place of a log. */
  @Override
  public boolean estimated() {
    return span.statesLately() && span.hasUnknown();
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
    boolean stated = !fields.isEmpty() && STATED.containsAll(fields) && span.statesLately();
    List<String> doubts = new ArrayList<>(notWritten());
    if (!stated && span.thin()) {
      doubts.add(span.logOfAllDays());
    } else {
      LocalDate since = span.unloggedSince();
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
    return span.notWritten();
  }

  /** What {@code lately} can stand in for. */
  private static final Set<String> STATED =
      Set.of("longestRideMinutes", "longestRunMinutes", "longestSwimMetres", "openWaterSwims");

  @Override
  public @Nullable LocalDate bites() {
    return span.last;
  }

  @Override
  public List<Where> where() {
    return List.of(span.timeline.weeks().lastWritten(span.first, span.last));
  }
}
