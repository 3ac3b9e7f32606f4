package peakproof.cli;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import peakproof.begin.NewEvent;
import peakproof.begin.NewHouse;
import peakproof.begin.NewPlan;
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
      code = commands(arguments, in, out, err, messages, surroundings).execute(arguments);
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

  /**
   * The command asked for by name alone, else all of them: each that is made costs every start some
   * milliseconds.
   */
  private static CommandLine commands(
      String[] arguments,
      InputStream in,
      PrintWriter out,
      PrintWriter err,
      Messages messages,
      Surroundings surroundings) {
    Map<String, Supplier<Object>> known =
        known(in, messages, surroundings, HeadStart.of(arguments, surroundings));
    String asked = arguments.length == 0 ? "" : arguments[0];
    boolean alone = known.containsKey(asked) && !asked.equals(CompletionCommand.NAME);
    CommandLine program = new CommandLine(new PeakproofCommand());
    known.forEach(
        (name, command) -> {
          if (!alone || name.equals(asked)) {
            program.addSubcommand(name, command.get());
          }
        });
    program
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
    describe(program, new Version(surroundings.home()));
    return program;
  }

  /** Every command, made when it is asked for. */
  private static Map<String, Supplier<Object>> known(
      InputStream in, Messages messages, Surroundings surroundings, HeadStart start) {
    Map<String, Supplier<Object>> known = new LinkedHashMap<>();
    known.put(AuditCommand.NAME, () -> new AuditCommand(in, messages, surroundings, start));
    known.put("ask", () -> new AskCommand(messages, surroundings));
    known.put("brief", () -> new BriefCommand(messages, surroundings));
    known.put("roster", () -> new RosterCommand(messages, surroundings));
    known.put("forecast", () -> new ForecastCommand(messages, surroundings));
    known.put("measures", () -> new MeasuresCommand(messages, surroundings));
    known.put(
        "log",
        () ->
            new CommandLine(new LogCommand())
                .addSubcommand(new LogImportCommand(messages, surroundings))
                .addSubcommand(new LogAddCommand(messages)));
    known.put(
        "plan",
        () -> new CommandLine(new PlanCommand()).addSubcommand(new PlanImportCommand(messages)));
    known.put("new", () -> begun(new Begun(in, messages, surroundings), surroundings));
    known.put("rules", () -> rules(messages, surroundings));
    known.put("why", () -> new WhyCommand(messages, surroundings));
    known.put("warm", () -> new WarmCommand(messages, surroundings));
    known.put("doctor", () -> new DoctorCommand(messages, surroundings));
    known.put(CompletionCommand.NAME, () -> new CompletionCommand(messages));
    return known;
  }

  private static CommandLine begun(Begun begun, Surroundings surroundings) {
    return new CommandLine(new NewCommand())
        .addSubcommand(Begun.command(new NewPlanCommand(begun, surroundings), NewPlan.asked()))
        .addSubcommand(Begun.command(new NewEventCommand(begun), new NewEvent().items()))
        .addSubcommand(Begun.command(new NewHouseCommand(begun), new NewHouse().items()));
  }

  private static CommandLine rules(Messages messages, Surroundings surroundings) {
    return new CommandLine(new RulesCommand())
        .addSubcommand(new RulesListCommand(messages, surroundings))
        .addSubcommand(new RulesShowCommand(messages, surroundings))
        .addSubcommand(new RulesCheckCommand(messages, surroundings))
        .addSubcommand(new RulesTryCommand(messages, surroundings))
        .addSubcommand(new RulesNewCommand(messages, surroundings))
        .addSubcommand(new RulesExportCommand(messages, surroundings));
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

  private static void describe(CommandLine command, Version version) {
    Map<String, String> meanings = new LinkedHashMap<>();
    for (int number = 0; number < ExitCode.values().length; number++) {
      for (ExitCode code : ExitCode.values()) {
        if (code.number() == number) {
          meanings.put(String.valueOf(number), code.meaning());
        }
      }
    }
    command.getCommandSpec().versionProvider(version);
    command.getCommandSpec().usageMessage().exitCodeListHeading("%nExit codes:%n");
    command.getCommandSpec().usageMessage().exitCodeList(meanings);
    command.getSubcommands().values().forEach(each -> describe(each, version));
  }
}
