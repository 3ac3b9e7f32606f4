package peakproof.bench;

import java.util.List;

/**
 * How much is run.
 *
 * @param starts cold starts of each kind, after one that does not count
 * @param forks Javas for each benchmark of a warm one
 * @param warmUps spans that do not count in each fork
 * @param spans spans that count in each fork
 * @param milliseconds length of a span
 * @param plans in the folder that is timed
 * @param rounds how often it is
 * @param memory numbers of plans in the folders whose memory is looked at, each once
 */
record Size(
    int starts,
    int forks,
    int warmUps,
    int spans,
    int milliseconds,
    int plans,
    int rounds,
    List<Integer> memory) {
  /** A quarter of an hour on two quiet cores. */
  static final Size FULL = new Size(7, 2, 3, 5, 1200, 2000, 3, List.of(1000, 10_000));

  /** Shows that everything runs; its numbers mean nothing. */
  static final Size QUICK = new Size(1, 1, 1, 1, 200, 12, 1, List.of(12, 24));

  static Size of(String word) {
    return switch (word) {
      case "full" -> FULL;
      case "quick" -> QUICK;
      default ->
          throw new IllegalArgumentException("bench.size is full or quick, not '" + word + "'");
    };
  }
}
