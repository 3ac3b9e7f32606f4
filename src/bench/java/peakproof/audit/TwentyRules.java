package peakproof.audit;

import static java.util.Comparator.naturalOrder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.bench.ByHand;
import peakproof.document.Dossier;
import peakproof.document.Plan;
import peakproof.fact.Fact;
import peakproof.fact.Facts;
import peakproof.fact.Settings;
import peakproof.rule.Resolution;
import peakproof.rule.RuleFolder;
import peakproof.rule.Ruleset;
import peakproof.rule.ShippedRules;

/** Those of the shipped rules that are also written by hand, judged by the engine and by hand. */
final class TwentyRules {
  private final Ruleset rules;

  /**
   * @param rules all that are shipped
   */
  TwentyRules(Ruleset rules) {
    this.rules = rules;
  }

  /** One plan ready to be judged; facts remember what was asked of them, so they count once. */
  record Ready(Facts facts, Plan plan, Map<String, Settings> settings) {}

  /**
   * Those rules with an engine that knows the twenty and no more.
   *
   * @param all the shipped rules
   * @param shipped their folder
   * @param empty a folder for a copy of the twenty
   */
  static TwentyRules alone(Ruleset all, Path shipped, Path empty) throws IOException {
    try (Stream<Path> files = Files.list(shipped)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, empty.resolve(file.getFileName()));
      }
    }
    for (String rule : ByHand.rules()) {
      Path stem = all.origin().get(rule);
      Path theme = Files.createDirectories(empty.resolve(all.card(rule).theme()));
      for (String ending : List.of(".drl", ".yaml", ".cases.yaml")) {
        Files.copy(Path.of(stem + ending), theme.resolve(rule + ending));
      }
    }
    Ruleset twenty = RuleFolder.toJudge(List.of(empty), ShippedRules.ofThisProgram());
    if (!twenty.cards().keySet().equals(ByHand.rules())) {
      throw new IllegalStateException("not the twenty: " + twenty.cards().keySet());
    }
    return new TwentyRules(
        new Ruleset(
            all.cards(),
            all.formerNames(),
            twenty.knowledge(),
            all.origin(),
            all.measures(),
            all.waterTable(),
            all.presets(),
            all.cautions(),
            all.cases(),
            all.ofHealth(),
            all.faults()));
  }

  Ready ready(Dossier dossier, @Nullable LocalDate asOf) {
    Resolution resolved = Resolution.of(rules, dossier);
    LocalDate day = asOf == null ? Facts.lastKnownDay(dossier) : asOf;
    Map<String, Settings> twenty = new TreeMap<>(resolved.settings());
    twenty.keySet().retainAll(ByHand.rules());
    return new Ready(
        Facts.of(dossier, day, resolved.constants(), rules.waterTable()), dossier.plan(), twenty);
  }

  /** By the engine. */
  Map<String, Judge.Outcome> judge(Ready plan) {
    try {
      return new Judge(rules, plan.plan, plan.facts, plan.settings, new Watchdog()).judge();
    } catch (RunawayRule e) {
      throw new IllegalStateException(e);
    }
  }

  /** By hand. */
  static Map<String, List<Fact>> byHand(Ready plan) {
    return ByHand.judge(plan.facts, plan.plan, plan.settings);
  }

  /** What the engine finds, in words that can be compared: each rule with the places it reports. */
  Map<String, List<String>> found(Ready plan) {
    Map<String, List<Fact>> facts = new TreeMap<>();
    judge(plan)
        .forEach(
            (rule, outcome) -> {
              if (outcome instanceof Judge.Outcome.Found found) {
                facts.put(rule, found.reports().stream().map(Reports.Report::fact).toList());
              }
            });
    return places(facts);
  }

  /** What is found by hand, in the same words. */
  static Map<String, List<String>> foundByHand(Ready plan) {
    return places(byHand(plan));
  }

  private static Map<String, List<String>> places(Map<String, List<Fact>> found) {
    Map<String, List<String>> places = new TreeMap<>();
    found.forEach(
        (rule, facts) -> {
          List<String> its = new ArrayList<>();
          facts.forEach(fact -> its.add(fact.getClass().getSimpleName() + " " + fact.where()));
          its.sort(naturalOrder());
          places.put(rule, its);
        });
    return places;
  }
}
