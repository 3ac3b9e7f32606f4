package peakproof.report;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Finding;
import peakproof.rule.Severity;

/**
 * Counts what is found for several athletes. Of a squad of any size only a few words of each rule
 * are kept.
 */
final class InCommon {
  /** Two may share something by chance; common practice, no source. */
  private static final int LEAST_ATHLETES = 3;

  /** Of a large squad a tenth: below it a word to each takes less time than one to all. */
  private static final int LEAST_TENTHS = 1;

  private static final Comparator<Shared> ORDER =
      Comparator.comparing(Shared::severity)
          .thenComparing(Comparator.comparingInt(Shared::athletes).reversed())
          .thenComparing(Shared::rule);

  private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?]) +");

  private final Map<String, Count> counts = new HashMap<>();
  private int athletes;

  /** One rule's words, as the first plan has them, and how often it found something. */
  private static final class Count {
    private final Finding first;
    private final Map<Severity, Integer> found = new EnumMap<>(Severity.class);
    private final boolean ofHealth;
    private boolean sameAdvice = true;

    Count(Finding first, boolean ofHealth) {
      this.first = first;
      this.ofHealth = ofHealth;
    }

    void add(Finding finding) {
      found.merge(finding.severity(), 1, Integer::sum);
      sameAdvice &= advice(finding).equals(advice(first));
    }

    int athletes() {
      return found.values().stream().mapToInt(Integer::intValue).sum();
    }

    Severity usual() {
      Severity usual = first.severity();
      for (Severity severity : found.keySet()) {
        int more = found.get(severity) - found.getOrDefault(usual, 0);
        usual = more > 0 || more == 0 && severity.atLeast(usual) ? severity : usual;
      }
      return usual;
    }

    Shared shared(int of) {
      return new Shared(
          first.rule(),
          first.theme(),
          ofHealth,
          usual(),
          first.title(),
          athletes(),
          of,
          message(of));
    }

    private @Nullable String message(int of) {
      return ofHealth || !sameAdvice
          ? null
          : "This is for "
              + athletes()
              + " of the "
              + of
              + " of us. "
              + first.title()
              + ". "
              + advice(first);
    }

    private static String advice(Finding finding) {
      return forAthletes(finding.remedy())
          + (finding.care() == null ? "" : " Take care: " + finding.care());
    }

    /** Entries of the files are the coach's business; what is about nothing else is left out. */
    private static String forAthletes(String remedy) {
      List<String> sentences =
          Arrays.stream(SENTENCE.split(remedy)).filter(one -> !one.contains("`")).toList();
      return sentences.isEmpty() ? remedy : String.join(" ", sentences);
    }
  }

  /**
   * Counts one athlete's findings, each rule once at its heaviest.
   *
   * @param ofHealth rules that find something in health entries
   */
  void add(List<Finding> ranked, Set<String> ofHealth) {
    athletes++;
    Set<String> counted = new HashSet<>();
    for (Finding finding : ranked) {
      if (counted.add(finding.rule())) {
        counts
            .computeIfAbsent(finding.rule(), rule -> new Count(finding, ofHealth.contains(rule)))
            .add(finding);
      }
    }
  }

  /** What at least three athletes have in common, and at least a tenth of them. */
  List<Shared> all() {
    return counts.values().stream()
        .filter(count -> count.athletes() >= LEAST_ATHLETES)
        .filter(count -> 10 * count.athletes() >= LEAST_TENTHS * athletes)
        .map(count -> count.shared(athletes))
        .sorted(ORDER)
        .toList();
  }
}
