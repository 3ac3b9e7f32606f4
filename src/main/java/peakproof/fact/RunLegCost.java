package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.EnduranceTime;

/**
 * The goal of the run against the same distance run fresh, as the newest race or test projects it
 * by the usual and by the cautious exponent.
 *
 * @param pointer the goal's entry
 * @param runMinutes the goal
 * @param freshMinutes run fresh, by the usual exponent
 * @param freshCautiousMinutes run fresh, by the cautious exponent
 * @param costShare by which share the goal is slower than fresh; negative when it is faster
 * @param costCautiousShare the same by the cautious exponent
 */
public record RunLegCost(
    String pointer,
    double runMinutes,
    double freshMinutes,
    double freshCautiousMinutes,
    double costShare,
    double costCautiousShare)
    implements Fact {

  /** True when the goal asks for more than even the usual exponent gives for fresh legs. */
  public boolean fasterThanFresh() {
    return costShare < 0;
  }

  /** Null without a goal for the run, its length, or a race or test to project from. */
  static @Nullable RunLegCost of(Goal goal, Race race, Calibration athlete, Constants constants) {
    Double minutes = goal.runMinutes();
    Double leg = race.runMetres();
    Athlete.Test test = athlete.runTest();
    Double metres = test == null ? null : test.metres();
    Double seconds = test == null ? null : test.seconds();
    if (minutes == null || leg == null || metres == null || seconds == null) {
      return null;
    }
    double usual = fresh(metres, seconds, leg, constants.of(Constant.RIEGEL_EXPONENT));
    double cautious = fresh(metres, seconds, leg, constants.of(Constant.RIEGEL_CAUTIOUS));
    return new RunLegCost(
        goal.pointer(),
        minutes,
        usual,
        cautious,
        Exact.of(minutes / usual - 1),
        Exact.of(minutes / cautious - 1));
  }

  private static double fresh(double metres, double seconds, double leg, double exponent) {
    return EnduranceTime.scaled(metres, seconds, leg, exponent) / 60;
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
