package peakproof.audit;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.House;
import peakproof.rule.Later;
import peakproof.rule.RulePaths;
import peakproof.rule.Ruleset;

/**
 * The rules of a run: those all plans share, and beside them, for each house with rules of its own,
 * both together.
 */
final class Rulesets {
  private final List<Path> folders;
  private final Function<List<Path>, Ruleset> reading;
  private final Later<Ruleset> shared;
  private final Map<List<Path>, Ruleset> ofHouses = new ConcurrentHashMap<>();

  /** Begins to read the shared rules, while others read documents. */
  Rulesets(List<Path> folders, Function<List<Path>, Ruleset> reading) {
    this.folders = folders;
    this.reading = reading;
    this.shared = Later.of("rules", () -> reading.apply(folders));
  }

  Ruleset shared() {
    return shared.get();
  }

  /** The rules for the plans of a house; its own folders count once, however they are named. */
  Ruleset of(@Nullable House house) {
    if (house == null || house.ownRules().isEmpty()) {
      return shared();
    }
    List<Path> all = RulePaths.with(folders, house.ownRules());
    return all.size() == folders.size() ? shared() : ofHouses.computeIfAbsent(all, reading);
  }

  /** What is wrong with the rules that only some houses have. */
  List<Fault> faultsOfHouses() {
    return ofHouses.values().stream()
        .flatMap(rules -> rules.faults().stream())
        .filter(fault -> !shared().faults().contains(fault))
        .distinct()
        .sorted()
        .toList();
  }
}
