package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.RunLegRatio;

/**
 * The goal of the run against the same distance run fresh, as the newest race or test projects it
 * by the usual and by the cautious exponent. The kinder of the two decides.
 *
 * @param pointer the goal's entry
 * @param runMinutes the goal
 * @param freshMinutes run fresh, by the usual exponent
 * @param freshCautiousMinutes run fresh, by the cautious exponent
 * @param leastShare by which share the goal should at least be slower than fresh
 * @param mostShare by which share it may be slower before it is worth a word
 * @param tooNear true when it is less than the first share slower by both exponents
 * @param fasterThanFresh true when it is faster than fresh by both
 * @param tooFar true when it is more than the second share slower by both
 */
public record RunLegCost(
    String pointer,
    double runMinutes,
    double freshMinutes,
    double freshCautiousMinutes,
    double leastShare,
    double mostShare,
    boolean tooNear,
    boolean fasterThanFresh,
    boolean tooFar)
    implements Fact {

  /** By which share the goal is slower than fresh; negative when it is faster. */
  public double costShare() {
    return Exact.of(runMinutes / freshMinutes - 1);
  }

  /** The same by the cautious exponent. */
  public double costCautiousShare() {
    return Exact.of(runMinutes / freshCautiousMinutes - 1);
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
    RunLegRatio ratio = RunLegRatio.projected(60 * minutes, leg, metres, seconds, constants);
    Double usual = ratio.usual().value();
    Double cautious = ratio.cautious().value();
    RunLegRatio.Verdict verdict = ratio.verdict(constants);
    if (usual == null || cautious == null || verdict == null) {
      return null;
    }
    boolean faster = verdict == RunLegRatio.Verdict.IMPLAUSIBLE;
    return new RunLegCost(
        goal.pointer(),
        minutes,
        minutes / usual,
        minutes / cautious,
        Exact.of(constants.of(Constant.RUN_LEG_QUESTION) - 1),
        Exact.of(constants.of(Constant.RUN_LEG_GENEROUS) - 1),
        faster || verdict == RunLegRatio.Verdict.QUESTIONABLE,
        faster,
        verdict == RunLegRatio.Verdict.GENEROUS);
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
