package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import peakproof.document.Documents;
import peakproof.document.Fault;
import peakproof.document.LogReading;
import peakproof.document.Place;
import peakproof.document.Splice;
import peakproof.document.Tree;
import peakproof.intake.LogBook;
import peakproof.intake.LogMerge;

/** A log that sessions are added to. */
final class LogFile {
  private final SplicedFile document;
  private final @Nullable LogReading reading;
  private final @Nullable Path house;

  private LogFile(SplicedFile document, @Nullable LogReading reading, @Nullable Path house) {
    this.document = document;
    this.reading = reading;
    this.house = house;
  }

  /**
   * Opens a log.
   *
   * @param path its file, or the folder it lies in as {@code log.yaml}
   */
  static LogFile open(Path path, @Nullable Path house) {
    Path file = Files.isDirectory(path) ? path.resolve("log.yaml") : path;
    SplicedFile document = SplicedFile.open(file);
    Splice splice = document.splice();
    return new LogFile(
        document, splice == null ? null : Documents.readLog(file, splice.tree(), house), house);
  }

  /** What is wrong with it as it is. */
  List<Fault> faults() {
    return reading == null ? document.faults() : reading.faults();
  }

  /** What the log has. */
  LogMerge merge() {
    Place top = new Place(document.name(), 1, 1);
    return reading == null
        ? new LogMerge(null, pointer -> top)
        : new LogMerge(reading.log(), reading.positions());
  }

  /** What the log says. */
  LogBook book() {
    Splice splice = document.splice();
    return splice == null ? LogBook.begun() : LogBook.of(splice.content());
  }

  /** What the log's own reader finds wrong with a text in its place. */
  List<Fault> wrong(Tree tree) {
    return Documents.readLog(document.file(), tree, house).faults();
  }

  /** Writes the log when anything was added; see {@link SplicedFile#finish}. */
  ExitCode finish(
      LogBook book, int added, boolean dryRun, Messages messages, Consumer<String> tell) {
    return document.finish(book.content(), added, dryRun, this::wrong, messages, tell);
  }
}
