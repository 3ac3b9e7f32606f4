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

  /** The faults the log would have. */
  Splice.Result with(LogBook book) {
    return document.with(
        book.content(), tree -> Documents.readLog(document.file(), tree, house).faults());
  }

  /**
   * Writes the log when anything was added to it.
   *
   * @param tell is told what was done with the file, in a sentence, before it is done
   */
  ExitCode finish(
      LogBook book, int added, boolean dryRun, Messages messages, Consumer<String> tell) {
    if (added == 0) {
      tell.accept(document.name() + " stays as it is.");
      return ExitCode.FINE;
    }
    Splice.Result result = with(book);
    String text = result.text();
    if (text == null) {
      messages.tell(result.faults());
      messages.tell(document.name() + " stays as it is.");
      return ExitCode.WRONG_DOCUMENT;
    }
    boolean begun = document.splice() == null;
    if (dryRun) {
      tell.accept(document.name() + (begun ? " would be begun" : " would change") + "; nothing was written.");
      return ExitCode.FINE;
    }
    ExitCode written = document.write(text, messages);
    if (written == ExitCode.FINE) {
      tell.accept(document.name() + (begun ? " is begun." : " has them now."));
    }
    return written;
  }
}
