package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Critical swim speed: the slope of distance on time over maximal trials, after Wakayoshi 1992, Eur
 * J Appl Physiol 64:153. The intercept is the distance that can be swum above it. Two trials give
 * no error of estimate; 200 m and 400 m over-read what is held for 3.8 km.
 *
 * @param speed metres a second; null when the trials were refused
 * @param reserve the intercept, metres; null when the trials were refused
 * @param refusal why the trials do not count; empty when they do
 */
public record CriticalSwimSpeed(@Nullable Double speed, @Nullable Double reserve, String refusal) {

  /** One maximal trial. */
  public record Trial(double metres, double seconds) {}

  /**
   * Fits two or more trials by least squares. Refused: fewer than two distances, a longer trial
   * faster than a shorter one, a reserve outside 5 to 45 m.
   */
  public static CriticalSwimSpeed of(List<Trial> trials, Constants constants) {
    if (trials.stream().map(Trial::metres).distinct().count() < 2) {
      return refused("two trials over different distances are needed");
    }
    for (Trial shorter : trials) {
      for (Trial longer : trials) {
        if (longer.metres > shorter.metres
            && longer.seconds * shorter.metres <= shorter.seconds * longer.metres) {
          return refused("the longer trial is as fast as the shorter: mis-paced");
        }
      }
    }
    return fitted(trials, constants);
  }

  private static CriticalSwimSpeed fitted(List<Trial> trials, Constants constants) {
    StraightLine line =
        StraightLine.through(
            trials.stream()
                .map(trial -> new StraightLine.Point(trial.seconds, trial.metres))
                .toList());
    if (line == null
        || !(line.slope() > 0)
        || Limit.below(line.intercept(), constants.of(Constant.SWIM_RESERVE_LEAST))
        || Limit.above(line.intercept(), constants.of(Constant.SWIM_RESERVE_MOST))) {
      return refused("the trials do not fit together: one was not swum all out, or ill paced");
    }
    return new CriticalSwimSpeed(line.slope(), line.intercept(), "");
  }

  private static CriticalSwimSpeed refused(String why) {
    return new CriticalSwimSpeed(null, null, why);
  }
}
