package peakproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import peakproof.begin.NewHouse;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Starts a house file. */
@Command(
    name = "house",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description =
        "Starts a house file: where the club asks something else than the rules as shipped.",
    footer = {
      "",
      "Examples: by questions; by options",
      "  peakproof new house plans/house.yaml",
      "  peakproof new house plans/house.yaml --name \"Tidemill Tri\""
    })
final class NewHouseCommand implements Callable<Integer> {
  private final Begun begun;
  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "The file to write. Default: house.yaml.")
  private Path file = Path.of("house.yaml");

  NewHouseCommand(Begun begun) {
    this.begun = begun;
  }

  @Override
  public Integer call() {
    return begun.begin(command, new NewHouse(), file).number();
  }
}
