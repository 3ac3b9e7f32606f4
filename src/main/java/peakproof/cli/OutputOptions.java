package peakproof.cli;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where what is written goes. */
final class OutputOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--output",
      paramLabel = "FILE",
      description = "Write to a file instead of standard output.")
  private @Nullable Path output;

  /** True when it goes to a file. */
  boolean toFile() {
    return output != null;
  }

  /** Writes the text; a file that cannot be written is told. */
  ExitCode write(String text, Messages messages) {
    if (output == null) {
      command.commandLine().getOut().print(text);
      return ExitCode.FINE;
    }
    try {
      Output.write(output, text);
      return ExitCode.FINE;
    } catch (IOException refused) {
      messages.tell(
          "peakproof: cannot write '" + output + "' (" + refused.getClass().getSimpleName() + ")");
      return ExitCode.WRONG_USAGE;
    }
  }
}
