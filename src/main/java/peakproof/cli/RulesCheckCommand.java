package peakproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.document.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads and compiles every rule, and lists what is wrong with any of them. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Lists every fault of every rule and card.",
    footer = {
      "",
      "Example: check the shipped rules and the club's own",
      "  peakproof rules check our-rules"
    })
final class RulesCheckCommand implements Callable<Integer> {
  private final Messages messages;
  private final Surroundings surroundings;

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "DIR",
      arity = "0..1",
      description = "A folder of rules to check besides the shipped ones.")
  private @Nullable Path checked;

  @Mixin private RuleFolders rules = new RuleFolders();

  RulesCheckCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    List<Path> folders = rules.all(surroundings, checked);
    List<Fault> faults = Auditor.load(folders).ruleFaults();
    messages.tell(faults);
    if (!faults.isEmpty()) {
      return ExitCode.WRONG_RULE.number();
    }
    String where = folders.stream().map(Path::toString).collect(Collectors.joining(", "));
    command.commandLine().getOut().print("No fault in the rules of " + where + "\n");
    return ExitCode.FINE.number();
  }
}
