package peakproof.fact;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * How the weeks to the race are arranged.
 *
 * @param peakWeeks peak weeks of the final block; unknown when a week's phase is
 * @param taperWeeks taper weeks of the final block; unknown when a week's phase is
 * @param buildWeeksInARow most build weeks in a row without a lighter or interrupted one
 * @param bigWeeksInARow most build and peak weeks in a row without a lighter or interrupted one
 * @param peakWeeksWithoutStrength known peak weeks with no strength work and no declared gap
 * @param offBikeShare runs straight off the bike as a share of the runs of known peak weeks
 * @param hardRunOffBike true when a planned hard run of a peak week is straight off the bike
 */
public record Block(
    String pointer,
    @Nullable Double peakWeeks,
    @Nullable Double taperWeeks,
    double buildWeeksInARow,
    double bigWeeksInARow,
    double peakWeeksWithoutStrength,
    @Nullable Double offBikeShare,
    boolean hardRunOffBike)
    implements Fact {

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }

  static Block of(String pointer, List<Week> weeks) {
    List<Week> peak =
        weeks.stream().filter(week -> week.phase() == Phase.PEAK && week.known()).toList();
    double runs = peak.stream().mapToDouble(Week::runs).sum();
    double offBike = peak.stream().mapToDouble(Week::bricks).sum();
    return new Block(
        pointer,
        finalBlock(weeks, Phase.PEAK),
        finalBlock(weeks, Phase.TAPER),
        mostInARow(weeks, week -> week.phase() == Phase.BUILD),
        mostInARow(weeks, week -> week.phase() == Phase.BUILD || week.phase() == Phase.PEAK),
        peak.stream()
            .filter(week -> week.strengthSessions() < 1 && !week.withoutStrength())
            .filter(week -> !week.interrupted())
            .count(),
        runs > 0 ? (Double) (offBike / runs) : null,
        peak.stream()
            .flatMap(Week::sessions)
            .anyMatch(s -> s instanceof Run run && s.planned() && run.hard() && run.offBike()));
  }

  /**
   * Weeks of a phase from the last such week backwards; lighter weeks and camps do not part them.
   */
  private static @Nullable Double finalBlock(List<Week> weeks, Phase phase) {
    if (weeks.stream().noneMatch(week -> week.phase() == phase)) {
      return null;
    }
    double count = 0;
    for (int i = weeks.size() - 1; i >= 0; i--) {
      Phase its = weeks.get(i).phase();
      if (its == null) {
        return count > 0 ? (Double) count : null;
      }
      if (its == phase) {
        count++;
      } else if (count > 0 && its != Phase.CAMP && its != Phase.LIGHTER) {
        return count;
      }
    }
    return count;
  }

  private static double mostInARow(List<Week> weeks, Predicate<Week> counted) {
    double most = 0;
    double run = 0;
    boolean changeable = false;
    for (Week week : weeks) {
      boolean goesOn = counted.test(week) && week.known() && !week.lighter() && !week.interrupted();
      run = goesOn ? run + 1 : 0;
      changeable = goesOn && (changeable || week.changeable());
      most = changeable ? Math.max(most, run) : most;
    }
    return most;
  }
}
