package peakproof.cli;

import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** A report on its way to a file: whole or not at all, so that no reader meets half of one. */
final class Output implements Closeable {
  private final BufferedWriter writer;
  private final @Nullable Path draft;
  private final Path target;

  private Output(BufferedWriter writer, @Nullable Path draft, Path target) {
    this.writer = writer;
    this.draft = draft;
    this.target = target;
  }

  /** Begins beside the file; in a device at once. */
  static Output to(Path file) throws IOException {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      return new Output(Files.newBufferedWriter(file, StandardCharsets.UTF_8), null, file);
    }
    Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    Path draft =
        target.resolveSibling(
            "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
    return new Output(
        Files.newBufferedWriter(
            draft, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
        draft,
        target);
  }

  Writer writer() {
    return writer;
  }

  /** Puts what was written in the place of the file. */
  void finish() throws IOException {
    writer.close();
    if (draft != null) {
      Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
    }
  }

  /** Leaves nothing behind of what was not finished. */
  @Override
  public void close() throws IOException {
    try {
      writer.close();
    } finally {
      if (draft != null) {
        Files.deleteIfExists(draft);
      }
    }
  }
}
