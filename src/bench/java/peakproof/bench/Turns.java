package peakproof.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Times processes turn and turn about, so that a noisy minute hits all alike. */
final class Turns {
  private final Map<String, List<Double>> seconds = new LinkedHashMap<>();

  /**
   * Runs all commands so often.
   *
   * @param before rounds that do not count
   */
  static Turns of(Map<String, Command> commands, int before, int rounds) {
    Turns turns = new Turns();
    for (int round = -before; round < rounds; round++) {
      for (Map.Entry<String, Command> command : commands.entrySet()) {
        double took = command.getValue().seconds();
        if (round >= 0) {
          turns.seconds.computeIfAbsent(command.getKey(), what -> new ArrayList<>()).add(took);
        }
      }
    }
    return turns;
  }

  double median(String what) {
    return median(seconds.get(what));
  }

  static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }
}
