package peakproof.fact;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What of a plan can still be changed, of which a need then has to be known. */
final class Ahead {
  private Ahead() {}

  static boolean nothing(Facts facts) {
    return facts.weeks().stream().noneMatch(Week::changeable);
  }

  static boolean someWeek(Facts facts, Predicate<Week> known) {
    return facts.weeks().stream().filter(Week::changeable).anyMatch(known);
  }

  /** Written weeks before race week: in race week nobody is asked about a jump. */
  static Stream<Week> weeks(Facts facts) {
    return facts.weeks().stream()
        .filter(week -> week.changeable() && !week.raceWeek() && !week.partlyUnwritten());
  }

  /** True when a week has a phase; race week is always taper and says nothing of the others. */
  static boolean somePhase(Facts facts) {
    List<Week> others =
        facts.weeks().stream().filter(week -> week.changeable() && !week.raceWeek()).toList();
    return others.isEmpty() || others.stream().anyMatch(week -> week.phase() != null);
  }

  /** The load of those weeks; that of a taper falls, and nobody asks after it. */
  static Stream<WeekLoad> loads(Facts facts) {
    List<Week> judged = weeks(facts).filter(week -> week.phase() != Phase.TAPER).toList();
    return facts.training().weekLoads().stream().filter(load -> judged.contains(load.week()));
  }

  static Stream<WeekLoad> buildLoads(Facts facts) {
    return loads(facts).filter(load -> load.phase() == Phase.BUILD);
  }

  static boolean noRide(Facts facts) {
    return facts.training().rideEfforts().stream().noneMatch(RideEffort::open);
  }

  /** True when something is known of a run to come, or none is to come. */
  static boolean noneOrSomeRun(Facts facts, Predicate<Run> known) {
    return facts.training().plannedRuns().findAny().isEmpty()
        || facts.training().plannedRuns().anyMatch(known);
  }
}
