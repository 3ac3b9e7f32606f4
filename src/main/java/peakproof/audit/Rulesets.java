package peakproof.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.House;
import peakproof.rule.RuleFolder;
import peakproof.rule.Ruleset;

/**
 * The rules of a run: those all plans share, and beside them, for each house with rules of its own,
 * both together.
 */
final class Rulesets {
  private final List<Path> folders;
  private final Ruleset shared;
  private final Map<List<Path>, Ruleset> ofHouses = new ConcurrentHashMap<>();

  Rulesets(List<Path> folders) {
    this.folders = folders;
    this.shared = RuleFolder.load(folders);
  }

  Ruleset shared() {
    return shared;
  }

  /** The rules for the plans of a house; its own folders count once, however they are named. */
  Ruleset of(@Nullable House house) {
    if (house == null || house.ownRules().isEmpty()) {
      return shared;
    }
    List<Path> all = new ArrayList<>(folders);
    house.ownRules().stream()
        .filter(own -> all.stream().noneMatch(other -> real(own).startsWith(real(other))))
        .forEach(all::add);
    return all.size() == folders.size()
        ? shared
        : ofHouses.computeIfAbsent(List.copyOf(all), RuleFolder::load);
  }

  /** What is wrong with the rules that only some houses have. */
  List<Fault> faultsOfHouses() {
    return ofHouses.values().stream()
        .flatMap(rules -> rules.faults().stream())
        .filter(fault -> !shared.faults().contains(fault))
        .distinct()
        .sorted()
        .toList();
  }

  private static Path real(Path folder) {
    try {
      return folder.toRealPath();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
