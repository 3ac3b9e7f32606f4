package peakproof.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.report.AuditFormat;
import peakproof.report.Balance;
import peakproof.report.Ink;
import peakproof.report.Judged;
import peakproof.report.Layout;
import peakproof.report.Rank;
import peakproof.report.Renderer;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Which reports are written, and where to: the main one and any number beside it. */
final class ReportOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = {
        "What to write: text, json, ndjson, sarif, junit, markdown or html. Default: text.",
        "All but text and markdown always have every finding; ndjson is one audit a line,",
        "html the page of one plan."
      })
  private @Nullable AuditFormat format;

  @Mixin private OutputOptions output = new OutputOptions();

  @Option(
      names = "--report",
      paramLabel = "FORMAT=FILE",
      converter = BesideConverter.class,
      description = "A further report of the same run; may be given several times.")
  private List<Beside> beside = List.of();

  @Option(
      names = "--with-health",
      description = {
        "Let sarif, junit and markdown tell what health entries say. Without it they",
        "name the file and the line only."
      })
  private boolean withHealth;

  /** A report beside the main one. */
  record Beside(AuditFormat format, Path file) {}

  /** Reads {@code sarif=FILE}. */
  static final class BesideConverter implements ITypeConverter<Beside> {
    @Override
    public Beside convert(String value) {
      int equals = value.indexOf('=');
      String word = equals < 0 ? value : value.substring(0, equals);
      for (AuditFormat format : AuditFormat.values()) {
        if (equals > 0
            && equals < value.length() - 1
            && format.name().equals(word.toUpperCase(Locale.ROOT))) {
          return new Beside(format, Path.of(value.substring(equals + 1)));
        }
      }
      throw new TypeConversionException(
          "expected FORMAT=FILE, such as sarif=audit.sarif, but was '" + value + "'");
    }
  }

  boolean withHealth() {
    return withHealth;
  }

  /** True when a report is asked for that has room for one plan. */
  boolean onePlanOnly() {
    return format == AuditFormat.HTML
        || beside.stream().anyMatch(each -> each.format() == AuditFormat.HTML);
  }

  /** True when the main report goes to a file. */
  boolean toFile() {
    return output.toFile();
  }

  OutputOptions output() {
    return output;
  }

  /** What stands in the way of a stream, which has one report in lines; null when nothing does. */
  @Nullable String notForStream() {
    if (format != null && format != AuditFormat.NDJSON) {
      return "'--stream' writes ndjson only";
    }
    return beside.isEmpty() ? null : "'--stream' writes one report; '--report' is for files";
  }

  /** The reports of one run. */
  @FunctionalInterface
  interface Run {
    void into(Reports reports) throws IOException;
  }

  /** The reports that are being written. */
  record Reports(List<Renderer> renderers) {
    List<String> pages(Judged judged) {
      return renderers.stream().map(renderer -> renderer.page(judged)).toList();
    }

    void add(Settled<Rank> settled) throws IOException {
      for (int i = 0; i < renderers.size(); i++) {
        renderers.get(i).add(Objects.requireNonNull(settled.kept()), settled.pages().get(i));
      }
    }

    void end(int plans, @Nullable Balance balance) throws IOException {
      for (Renderer renderer : renderers) {
        if (balance != null) {
          renderer.compared(balance);
        }
        renderer.end(plans);
      }
    }
  }

  /** Writes all of them in one run; what cannot be written is told, and then none is. */
  ExitCode write(Layout layout, Layout onFile, Run run, Messages messages) {
    refuseTwice();
    List<Output> files = new ArrayList<>();
    try {
      for (Beside each : beside) {
        Output file = open(each.file(), messages);
        if (file == null) {
          return ExitCode.WRONG_USAGE;
        }
        files.add(file);
      }
      return output.write(
          out -> {
            List<Renderer> renderers = new ArrayList<>();
            renderers.add((format == null ? AuditFormat.TEXT : format).to(out, layout));
            for (int i = 0; i < files.size(); i++) {
              renderers.add(beside.get(i).format().to(files.get(i).writer(), onFile));
            }
            run.into(new Reports(List.copyOf(renderers)));
            for (Output file : files) {
              file.finish();
            }
          },
          messages);
    } finally {
      files.forEach(file -> close(file, messages));
    }
  }

  private void refuseTwice() {
    Set<Path> seen = new HashSet<>();
    for (Beside each : beside) {
      if (!seen.add(each.file().toAbsolutePath().normalize()) || output.isTo(each.file())) {
        throw new ParameterException(
            command.commandLine(), "two reports cannot go to one file: '" + each.file() + "'");
      }
    }
  }

  private static @Nullable Output open(Path file, Messages messages) {
    try {
      return Output.to(file);
    } catch (IOException refused) {
      OutputOptions.refused(file, refused, messages);
      return null;
    }
  }

  private static void close(Output file, Messages messages) {
    try {
      file.close();
    } catch (IOException full) {
      messages.tell("peakproof: a report could not be finished");
    }
  }

  /** A layout as it is in files: without colour. */
  static Layout onFile(Layout layout, int width) {
    return new Layout(
        layout.choice(),
        width,
        Ink.PLAIN,
        layout.failAt(),
        layout.withHealth(),
        layout.program(),
        layout.rules());
  }
}
