package peakproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import peakproof.begin.NewEvent;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Starts an event file. */
@Command(
    name = "event",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Starts an event file: the race, its legs and its rules.",
    footer = {
      "",
      "Examples: by questions; by options",
      "  peakproof new event plans/events/saltmarsh.yaml",
      "  peakproof new event saltmarsh.yaml --name \"Saltmarsh Long Course\" --date 2027-07-04"
          + " --distance full"
    })
final class NewEventCommand implements Callable<Integer> {
  private final Begun begun;
  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "The file to write. Default: event.yaml.")
  private Path file = Path.of("event.yaml");

  NewEventCommand(Begun begun) {
    this.begun = begun;
  }

  @Override
  public Integer call() {
    return begun.begin(command, new NewEvent(), file).number();
  }
}
