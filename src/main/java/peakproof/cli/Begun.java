package peakproof.cli;

import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import peakproof.begin.Answers;
import peakproof.begin.Beginning;
import peakproof.begin.Item;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** The way from options or questions to a new file; nothing is ever written over. */
final class Begun {
  private final InputStream in;
  private final Messages messages;
  private final Surroundings surroundings;

  Begun(InputStream in, Messages messages, Surroundings surroundings) {
    this.in = in;
    this.messages = messages;
    this.surroundings = surroundings;
  }

  /** A command with an option for each item. */
  static CommandLine command(Object annotated, List<Item> items) {
    CommandSpec spec = CommandSpec.forAnnotatedObject(annotated);
    for (Item item : items) {
      String fallback = item.fallback() == null ? "" : " Default: " + item.fallback() + ".";
      spec.addOption(
          OptionSpec.builder("--" + item.name())
              .paramLabel(item.label())
              .type(String.class)
              .description(item.meaning() + (item.required() ? " Needed." : fallback))
              .build());
    }
    return new CommandLine(spec);
  }

  ExitCode begin(CommandSpec command, Beginning beginning, Path file) {
    refuseExisting(command, file);
    Map<String, String> given = given(command, beginning.items());
    Answers answers = new Answers(given);
    List<Item> missing = answers.missing(beginning.items());
    PrintWriter out = command.commandLine().getOut();
    if (!missing.isEmpty()) {
      if (!surroundings.terminal() || !surroundings.answering()) {
        throw wrong(command, missing(missing));
      }
      Map<String, String> answered = new Questions(in, out).ask(beginning.items(), given);
      if (answered == null) {
        throw wrong(command, "the answers ended before the questions; nothing was written");
      }
      answers = new Answers(answered);
      refuseExisting(command, file);
    }
    Beginning.Draft draft = beginning.draft(answers.completed(beginning.items()));
    if (draft instanceof Beginning.Draft.Refused refused) {
      throw wrong(command, String.join("\n", refused.reasons()));
    }
    return write((Beginning.Draft.Written) draft, file, out);
  }

  private ExitCode write(Beginning.Draft.Written written, Path file, PrintWriter out) {
    Path folder = Objects.requireNonNull(file.toAbsolutePath().getParent());
    ExitCode code = new NewFiles(Map.of(file, written.text())).write(folder, "FILE", messages);
    if (code == ExitCode.FINE) {
      out.println("Wrote " + file);
      written.remarks().forEach(remark -> out.println("  " + remark));
    }
    return code;
  }

  /** What the options say; with anything wrong in them, all of it is told. */
  private static Map<String, String> given(CommandSpec command, List<Item> items) {
    Map<String, String> given = new LinkedHashMap<>();
    List<String> troubles = new ArrayList<>();
    for (Item item : items) {
      String value = command.findOption("--" + item.name()).getValue();
      if (value != null) {
        given.put(item.name(), value);
        String trouble =
            value.isBlank()
                ? "this is empty; expected an answer; write one such as " + item.example()
                : item.check().apply(value);
        if (trouble != null) {
          troubles.add("--" + item.name() + ": " + trouble);
        }
      }
    }
    if (!troubles.isEmpty()) {
      throw wrong(command, String.join("\n", troubles));
    }
    return given;
  }

  private static String missing(List<Item> missing) {
    return "missing: "
        + missing.stream()
            .map(item -> "--" + item.name() + " (such as " + item.example() + ")")
            .collect(Collectors.joining(", "));
  }

  private static void refuseExisting(CommandSpec command, Path file) {
    if (!new NewFiles(Map.of(file, "")).existing().isEmpty()) {
      throw wrong(
          command,
          "there is '" + file + "' already, and nothing is written over; name another file");
    }
  }

  private static ParameterException wrong(CommandSpec command, String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
