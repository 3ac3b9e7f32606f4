package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.rule.KnownRules;
import peakproof.rule.RuleCache;
import peakproof.rule.RulePaths;
import peakproof.rule.ShippedRules;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where the rules of a run come from: the shipped folder, then the club's. */
final class RuleFolders {
  static final String OWN = "--rules";
  static final String WITHOUT_CACHE = "--no-cache";

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = OWN,
      paramLabel = "DIR",
      description = "A folder of the club's own rules, besides the shipped ones; repeatable.")
  private List<Path> own = List.of();

  @Option(
      names = WITHOUT_CACHE,
      description = "Compile the club's rules anew, and keep nothing of them for the next run.")
  private boolean withoutCache;

  /** An auditor by these rules. */
  Auditor auditor(Surroundings surroundings) {
    return Auditor.load(all(surroundings), known(surroundings));
  }

  /** An auditor by the shipped rules and no others; null when they are not where they should be. */
  static @Nullable Auditor shippedAlone(Surroundings surroundings) {
    Path folder = shipped(surroundings);
    return Files.isDirectory(folder)
        ? Auditor.load(List.of(folder), known(CacheFolder.of(surroundings)))
        : null;
  }

  /** True when {@link #shippedAlone} judges as the user wants. */
  boolean areShippedAlone() {
    return own.isEmpty() && !withoutCache;
  }

  /** The rules that need not be compiled again, found out where the rules are read. */
  Supplier<KnownRules> known(Surroundings surroundings) {
    return known(withoutCache ? null : CacheFolder.of(surroundings));
  }

  private static Supplier<KnownRules> known(@Nullable Path folder) {
    return () -> {
      ShippedRules shipped = ShippedRules.ofThisProgram();
      return folder == null ? shipped : RuleCache.of(folder.resolve("rules"), shipped);
    };
  }

  /** The folders in order, or a usage fault when one is no folder. */
  List<Path> all(Surroundings surroundings) {
    return all(surroundings, null);
  }

  /** The same and one more, unless it lies in one of them by whatever way it is named. */
  List<Path> all(Surroundings surroundings, @Nullable Path more) {
    Path shipped = existing(shipped(surroundings));
    List<Path> others =
        Stream.concat(own.stream(), Stream.ofNullable(more)).map(this::existing).toList();
    return RulePaths.with(List.of(shipped), others);
  }

  /** Rules that are wrong are told once, after the plans. */
  ExitCode wrong(Auditor auditor, Messages messages) {
    messages.tell(auditor.rules().faults());
    messages.tell(auditor.houseRuleFaults());
    return auditor.rules().faults().isEmpty() ? ExitCode.FINE : ExitCode.WRONG_RULE;
  }

  /** Faults name a file as a reader in this folder would: {@code rules/swim/…}. */
  private static Path shipped(Surroundings surroundings) {
    Path folder = surroundings.home().resolve("rules");
    Path here = Path.of("").toAbsolutePath();
    return folder.startsWith(here) ? here.relativize(folder) : folder;
  }

  private Path existing(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new ParameterException(command.commandLine(), "no folder of rules at '" + folder + "'");
    }
    return folder;
  }
}
