package peakproof.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How much of a plan was done: three numbers and never one, for a long session does not make up for
 * a missed one. Common practice, no source.
 *
 * @param sessions share of the planned sessions done; null when none was planned
 * @param duration share of the planned minutes done, without credit for more; null when a duration
 *     is unknown or none was planned
 * @param excess minutes done beyond the plan, sessions of their own among them, as a share of the
 *     planned minutes; null as for the duration
 */
public record Adherence(
    @Nullable Double sessions, @Nullable Double duration, @Nullable Double excess) {

  /** Of matched sessions; what was cancelled beforehand must not be among the planned. */
  public static Adherence of(Matching matching) {
    int planned = matching.pairs().size() + matching.missed().size();
    if (planned == 0) {
      return new Adherence(null, null, null);
    }
    double sessions = (double) matching.pairs().size() / planned;
    List<double[]> minutes = new ArrayList<>();
    boolean known = true;
    for (Matching.Pair pair : matching.pairs()) {
      known &= add(minutes, pair.planned().minutes(), pair.done().minutes());
    }
    for (Matching.Entry missed : matching.missed()) {
      known &= add(minutes, missed.minutes(), 0.0);
    }
    for (Matching.Entry extra : matching.extra()) {
      known &= add(minutes, 0.0, extra.minutes());
    }
    double all = minutes.stream().mapToDouble(each -> each[0]).sum();
    double credited = minutes.stream().mapToDouble(each -> Math.min(each[0], each[1])).sum();
    double beyond = minutes.stream().mapToDouble(each -> Math.max(0, each[1] - each[0])).sum();
    double excess = beyond / all;
    return known && Limit.positive(all) && Double.isFinite(excess)
        ? new Adherence(sessions, credited / all, excess)
        : new Adherence(sessions, null, null);
  }

  private static boolean add(
      List<double[]> minutes, @Nullable Double planned, @Nullable Double done) {
    if (planned == null || done == null || !Limit.countable(planned) || !Limit.countable(done)) {
      return false;
    }
    minutes.add(new double[] {planned, done});
    return true;
  }
}
