package peakproof.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Fact;
import peakproof.fact.Findings;
import peakproof.fact.Settings;

/** Collects what the rules report, by rule. */
final class Reports implements Findings {
  /** One firing of a rule. */
  record Report(Fact fact, @Nullable Fact because, @Nullable Double value) {}

  private final Map<String, List<Report>> byRule = new TreeMap<>();
  private final int most;

  /**
   * @param most how often a rule is let report
   */
  Reports(int most) {
    this.most = most;
  }

  @Override
  public void report(Settings settings, Fact fact) {
    add(settings, new Report(fact, null, null));
  }

  @Override
  public void report(Settings settings, Fact fact, Fact because) {
    add(settings, new Report(fact, because, null));
  }

  @Override
  public void report(Settings settings, Fact fact, double value) {
    add(settings, new Report(fact, null, value));
  }

  @Override
  public void report(Settings settings, Fact fact, Fact because, double value) {
    add(settings, new Report(fact, because, value));
  }

  private void add(Settings settings, Report report) {
    byRule.computeIfAbsent(settings.rule(), rule -> new ArrayList<>()).add(report);
  }

  /** The rule that reported as often as it may at most; null when there is none. */
  @Nullable String endless() {
    return byRule.entrySet().stream()
        .filter(entry -> entry.getValue().size() >= most)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(null);
  }

  /** What a rule reported, in no order that could be relied on. */
  List<Report> of(String rule) {
    return byRule.getOrDefault(rule, List.of());
  }
}
