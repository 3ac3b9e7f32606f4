package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Two versions of one plan compared by the impulse-response model (Banister 1975; Morton 1990):
 * every load leaves something that helps and fades slowly and something that hinders and fades
 * faster, felt from the next day on. Its constants differ between people and are unstable (Hellard
 * 2006, from memory), and it always prefers complete rest before a race. So it only says which of
 * two versions it puts ahead and never recommends one.
 *
 * @param fitness by how much the first version's helping part is ahead, arbitrary units
 * @param fatigue by how much its hindering part is ahead
 * @param performance by how much its sum is ahead; negative when it is behind
 */
public record ImpulseResponse(Amount fitness, Amount fatigue, Amount performance) {

  /** What is left of all loads. */
  private record State(double fitness, double fatigue) {}

  /**
   * Compares two versions on the day after the last. Unknown with fewer than 28 days, days that do
   * not pair, or an unknown day.
   *
   * @param first loads of one kind day by day, oldest first, null for unknown days
   * @param second the same days in the other version
   */
  public static ImpulseResponse compared(
      List<@Nullable Double> first, List<@Nullable Double> second, Constants constants) {
    int least = (int) constants.of(Constant.RESPONSE_DAYS_LEAST);
    if (first.size() != second.size() || first.size() < least) {
      return unknown("two versions of the same " + least + " days or more");
    }
    State one = state(first, constants);
    State other = state(second, constants);
    if (one == null || other == null) {
      return unknown("the load of every day");
    }
    double fitness = one.fitness - other.fitness;
    double fatigue = one.fatigue - other.fatigue;
    return new ImpulseResponse(
        Amount.of(fitness),
        Amount.of(fatigue),
        Amount.of(
            constants.of(Constant.RESPONSE_FITNESS_GAIN) * fitness
                - constants.of(Constant.RESPONSE_FATIGUE_GAIN) * fatigue));
  }

  /**
   * Days before the race from which a session costs more on race day than it gives, after
   * Fitz-Clark, Morton and Banister 1991 (from memory).
   */
  public static Amount costlyWithin(Constants constants) {
    return mark(1, constants);
  }

  /** Days before the race on which a session gives most; from the same. */
  public static Amount mostUsefulAt(Constants constants) {
    return mark(
        constants.of(Constant.RESPONSE_FITNESS_DAYS) / constants.of(Constant.RESPONSE_FATIGUE_DAYS),
        constants);
  }

  private static Amount mark(double factor, Constants constants) {
    double slow = constants.of(Constant.RESPONSE_FITNESS_DAYS);
    double fast = constants.of(Constant.RESPONSE_FATIGUE_DAYS);
    double gains =
        constants.of(Constant.RESPONSE_FATIGUE_GAIN) / constants.of(Constant.RESPONSE_FITNESS_GAIN);
    double days = slow * fast / (slow - fast) * Math.log(gains * factor);
    return slow > fast && days >= 0
        ? Amount.of(days)
        : Amount.unknown("constants by which a load first costs and later gives");
  }

  private static @Nullable State state(List<@Nullable Double> loads, Constants constants) {
    double slow = Math.exp(-1 / constants.of(Constant.RESPONSE_FITNESS_DAYS));
    double fast = Math.exp(-1 / constants.of(Constant.RESPONSE_FATIGUE_DAYS));
    double fitness = 0;
    double fatigue = 0;
    for (Double load : loads) {
      if (load == null || !Limit.countable(load)) {
        return null;
      }
      fitness = (fitness + load) * slow;
      fatigue = (fatigue + load) * fast;
    }
    return new State(fitness, fatigue);
  }

  private static ImpulseResponse unknown(String because) {
    Amount unknown = Amount.unknown(because);
    return new ImpulseResponse(unknown, unknown, unknown);
  }
}
