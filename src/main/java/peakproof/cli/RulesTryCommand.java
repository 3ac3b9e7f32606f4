package peakproof.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.audit.CaseResult;
import peakproof.audit.Cases;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs the cases that stand beside each rule, the shipped ones or those of a club. */
@Command(
    name = "try",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Runs the cases beside each rule; a rule without a case is a fault.",
    footer = {
      "",
      "Examples: the shipped rules; the club's own",
      "  peakproof rules try",
      "  peakproof rules try our-rules"
    })
final class RulesTryCommand implements Callable<Integer> {
  private final Messages messages;
  private final Surroundings surroundings;

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "DIR",
      arity = "0..1",
      description = "The folder of rules to try. Default: the shipped rules.")
  private @Nullable Path tried;

  @Mixin private RuleFolders rules = new RuleFolders();

  RulesTryCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    List<Path> folders = rules.all(surroundings, tried);
    Path folder = tried == null ? folders.get(0) : tried;
    Auditor auditor = Auditor.load(folders);
    messages.tell(auditor.ruleFaults());
    List<String> untried = Cases.rulesWithout(auditor, folder);
    untried.forEach(rule -> messages.tell(rule + ": no case"));
    List<CaseResult> results = Cases.run(auditor, folder);
    messages.tell(auditor.ruleFaults());
    boolean sound = auditor.ruleFaults().isEmpty() && untried.isEmpty();
    List<CaseResult> failing = results.stream().filter(result -> !result.ok()).toList();
    tell(results, failing, sound, command.commandLine().getOut());
    ExitCode rulesAre = sound ? ExitCode.FINE : ExitCode.WRONG_RULE;
    return rulesAre.or(failing.isEmpty() ? ExitCode.FINE : ExitCode.FOUND).number();
  }

  private static void tell(
      List<CaseResult> results, List<CaseResult> failing, boolean sound, PrintWriter out) {
    failing.forEach(
        result -> out.print(result.rule() + ", " + result.name() + ": " + result.text() + "\n"));
    long rules = results.stream().map(CaseResult::rule).distinct().count();
    out.print(
        counted(results.size(), "case")
            + " of "
            + counted(rules, "rule")
            + " tried, "
            + failing.size()
            + " failed"
            + (sound ? "" : "; not all could be tried, mend the faults first")
            + "\n");
  }

  private static String counted(long count, String thing) {
    return count + " " + thing + (count == 1 ? "" : "s");
  }
}
