package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Whose house counts. */
final class HouseOption {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--house",
      paramLabel = "FILE",
      description = "The house file to use. Default: the nearest house.yaml above the plan.")
  private @Nullable Path house;

  /** The file the user named, null when none; a usage fault when there is no such file. */
  @Nullable Path named() {
    if (house != null && !Files.isRegularFile(house)) {
      throw new ParameterException(
          command.commandLine(), "Invalid value for option '--house': no file at '" + house + "'");
    }
    return house;
  }
}
