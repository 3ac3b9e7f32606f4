package peakproof.cli;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import peakproof.document.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The whole program: arguments in, text and an exit code out. */
public final class Program {
  private Program() {}

  /** Runs one command; every way out is a code of {@link ExitCode}, none an exception. */
  public static int run(
      String[] arguments,
      InputStream in,
      PrintWriter out,
      PrintWriter err,
      Surroundings surroundings) {
    Messages messages = new Messages(err, surroundings.watched());
    int code;
    try {
      code = commands(in, out, err, messages, surroundings).execute(arguments);
    } catch (Throwable mistake) {
      messages.tellOurMistake(mistake, null);
      code = ExitCode.INTERNAL_ERROR.number();
    }
    messages.clear();
    if (out.checkError()) {
      messages.tell("peakproof: standard output could not take the whole report");
      code = ExitCode.INTERNAL_ERROR.number();
    }
    err.flush();
    return code;
  }

  private static CommandLine commands(
      InputStream in,
      PrintWriter out,
      PrintWriter err,
      Messages messages,
      Surroundings surroundings) {
    CommandLine rules =
        new CommandLine(new RulesCommand())
            .addSubcommand(new RulesListCommand(messages, surroundings))
            .addSubcommand(new RulesShowCommand(messages, surroundings))
            .addSubcommand(new RulesCheckCommand(messages, surroundings))
            .addSubcommand(new RulesTryCommand(messages, surroundings))
            .addSubcommand(new RulesNewCommand(messages, surroundings))
            .addSubcommand(new RulesExportCommand(messages, surroundings));
    CommandLine program =
        new CommandLine(new PeakproofCommand())
            .addSubcommand(new AuditCommand(in, messages, surroundings))
            .addSubcommand(new AskCommand(messages, surroundings))
            .addSubcommand(new ForecastCommand(messages, surroundings))
            .addSubcommand(new MeasuresCommand(messages, surroundings))
            .addSubcommand(
                new CommandLine(new LogCommand())
                    .addSubcommand(new LogImportCommand(messages, surroundings))
                    .addSubcommand(new LogAddCommand(messages)))
            .addSubcommand(
                new CommandLine(new PlanCommand()).addSubcommand(new PlanImportCommand(messages)))
            .addSubcommand(rules)
            .addSubcommand(new WhyCommand(messages, surroundings))
            .addSubcommand(new WarmCommand(messages, surroundings))
            .setOut(out)
            .setErr(err)
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
            .setParameterExceptionHandler((wrong, given) -> explain(wrong, messages))
            .setExecutionExceptionHandler(
                (mistake, command, parsed) -> {
                  messages.tellOurMistake(mistake, null);
                  return ExitCode.INTERNAL_ERROR.number();
                });
    describeExitCodes(program);
    return program;
  }

  private static int explain(ParameterException wrong, Messages messages) {
    CommandSpec command = wrong.getCommandLine().getCommandSpec();
    messages.tell("peakproof: " + wrong.getMessage() + nearest(wrong, command));
    messages.tell("For help: " + command.qualifiedName() + " --help");
    return ExitCode.WRONG_USAGE.number();
  }

  private static String nearest(ParameterException wrong, CommandSpec command) {
    if (!(wrong instanceof UnmatchedArgumentException unmatched)) {
      return "";
    }
    List<String> known = new ArrayList<>(command.optionsMap().keySet());
    known.addAll(command.subcommands().keySet());
    String word = unmatched.getUnmatched().get(0).split("=", 2)[0];
    String near = Nearest.among(word, known);
    return near == null ? "" : "; did you mean " + near + "?";
  }

  private static void describeExitCodes(CommandLine command) {
    Map<String, String> meanings = new LinkedHashMap<>();
    for (int number = 0; number < ExitCode.values().length; number++) {
      for (ExitCode code : ExitCode.values()) {
        if (code.number() == number) {
          meanings.put(String.valueOf(number), code.meaning());
        }
      }
    }
    command.getCommandSpec().usageMessage().exitCodeListHeading("%nExit codes:%n");
    command.getCommandSpec().usageMessage().exitCodeList(meanings);
    command.getSubcommands().values().forEach(Program::describeExitCodes);
  }
}
