package peakproof.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a report to a file whole or not at all, so that no reader meets half of one. */
final class Output {
  private Output() {}

  static void write(Path file, String text) throws IOException {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      Files.writeString(file, text, StandardCharsets.UTF_8);
      return;
    }
    Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    Path draft =
        target.resolveSibling(
            "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
    try {
      Files.writeString(draft, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
      Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(draft);
    }
  }
}
