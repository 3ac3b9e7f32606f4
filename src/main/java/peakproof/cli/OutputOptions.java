package peakproof.cli;

import java.io.IOException;
import java.io.Writer;
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

  /** True when it goes to this file. */
  boolean isTo(Path file) {
    return output != null
        && output.toAbsolutePath().normalize().equals(file.toAbsolutePath().normalize());
  }

  /** The file; null for standard output. */
  @Nullable Path file() {
    return output;
  }

  /** Writes a report. */
  @FunctionalInterface
  interface Content {
    void writeTo(Writer out) throws IOException;
  }

  /** Writes the text; a file that cannot be written is told. */
  ExitCode write(String text, Messages messages) {
    return write(out -> out.write(text), messages);
  }

  /** Writes as the content comes; a file that cannot be written is told. */
  ExitCode write(Content content, Messages messages) {
    if (output == null) {
      return toStandardOutput(content, messages);
    }
    try (Output file = Output.to(output)) {
      content.writeTo(file.writer());
      file.finish();
      return ExitCode.FINE;
    } catch (IOException refused) {
      return refused(output, refused, messages);
    }
  }

  private ExitCode toStandardOutput(Content content, Messages messages) {
    try {
      content.writeTo(command.commandLine().getOut());
      return ExitCode.FINE;
    } catch (IOException full) {
      messages.tell("peakproof: cannot write the report " + kind(full));
      return ExitCode.INTERNAL_ERROR;
    }
  }

  /** Tells of a file or folder that cannot be written. */
  static ExitCode refused(Path file, IOException refused, Messages messages) {
    messages.tell("peakproof: cannot write '" + file + "' " + kind(refused));
    return ExitCode.WRONG_USAGE;
  }

  private static String kind(IOException refused) {
    return "(" + refused.getClass().getSimpleName() + ")";
  }
}
