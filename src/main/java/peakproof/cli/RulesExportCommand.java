package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import peakproof.audit.Auditor;
import peakproof.rule.NewRule;
import peakproof.rule.Ruleset;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes rules with their cards and cases into a folder, to be read or made another rule of. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Writes the rules with their cards and cases into a folder, to study or to fork.",
    footer = {
      "",
      "Examples: all rules; two of them, over those written before",
      "  peakproof rules export --output study",
      "  peakproof rules export swim-bilateral brick-none --output study --overwrite"
    })
final class RulesExportCommand implements Callable<Integer> {
  private final Messages messages;
  private final Surroundings surroundings;

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "RULE",
      arity = "0..*",
      description = "The rules to write. Default: all.")
  private List<String> named = List.of();

  @Option(
      names = "--output",
      paramLabel = "DIR",
      required = true,
      description = "The folder to write into; a folder for each theme is made in it.")
  private Path folder = Path.of("");

  @Option(names = "--overwrite", description = "Write over files that are there already.")
  private boolean overwrite;

  @Mixin private RulesInForce rules = new RulesInForce();

  RulesExportCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Auditor auditor = rules.load(messages, surroundings);
    Ruleset known = auditor.rules();
    List<String> chosen =
        named.isEmpty()
            ? List.copyOf(known.cards().keySet())
            : named.stream().map(name -> rules.rule(name, known)).distinct().toList();
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw wrong("'" + folder + "' is a file; name a folder to write into");
    }
    Map<Path, String> texts = new LinkedHashMap<>();
    chosen.forEach(rule -> texts.putAll(NewRule.copies(folder, known, rule)));
    NewFiles files = new NewFiles(texts);
    if (!overwrite && !files.existing().isEmpty()) {
      throw wrong(
          "there are "
              + files.existing().size()
              + " of these files already, such as '"
              + files.existing().get(0)
              + "'; name another folder, or write over them with --overwrite");
    }
    ExitCode written = files.write(folder, "--output", messages);
    if (written != ExitCode.FINE) {
      return written.number();
    }
    command.commandLine().getOut().print(next(chosen.size()));
    return RulesInForce.code(auditor).number();
  }

  private String next(int count) {
    return "Wrote "
        + (count == 1 ? "1 rule" : count + " rules")
        + " into "
        + folder
        + ", three files each: the logic (.drl), the card (.yaml), the cases (.cases.yaml).\n"
        + "To change a number or a word you need none of them: docs/house.md shows how.\n"
        + "To make a rule of your own of one, move its files into a folder of yours such as"
        + " our-rules/swim,\ngive them another name, write that name wherever the old one stands in"
        + " them, and silence the\nold rule in house.yaml. Then: peakproof rules check our-rules\n";
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
