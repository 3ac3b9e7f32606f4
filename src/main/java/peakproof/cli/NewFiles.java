package peakproof.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Files that belong together: all of them are written, or none. */
final class NewFiles {
  private final Map<Path, String> texts;

  /**
   * @param texts by the file each belongs in
   */
  NewFiles(Map<Path, String> texts) {
    this.texts = texts;
  }

  /** Those that are there already. */
  List<Path> existing() {
    return texts.keySet().stream().filter(Files::exists).toList();
  }

  /** Writes them all below the folder that an option names; what refuses it is told. */
  ExitCode write(Path folder, String option, Messages messages) {
    try {
      write(folder);
      return ExitCode.FINE;
    } catch (IOException refused) {
      messages.tell(
          "peakproof: cannot write in '"
              + folder
              + "' ("
              + refused.getClass().getSimpleName()
              + "); nothing was written. Choose another folder with "
              + option);
      return ExitCode.WRONG_USAGE;
    }
  }

  /** All are drafted inside the folder first, so that a full disk leaves nothing half done. */
  private void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    Path drafts = Files.createTempDirectory(folder, ".new-");
    try {
      Map<Path, Path> moves = new LinkedHashMap<>();
      for (Map.Entry<Path, String> file : texts.entrySet()) {
        Path draft = drafts.resolve(String.valueOf(moves.size()));
        Files.writeString(draft, file.getValue(), StandardCharsets.UTF_8);
        moves.put(draft, file.getKey());
      }
      move(moves);
    } finally {
      remove(drafts);
    }
  }

  private static void move(Map<Path, Path> moves) throws IOException {
    List<Path> made = new ArrayList<>();
    boolean whole = false;
    try {
      for (Map.Entry<Path, Path> move : moves.entrySet()) {
        Path target = move.getValue();
        Files.createDirectories(target.toAbsolutePath().getParent());
        if (Files.exists(target)) {
          Files.move(move.getKey(), target, StandardCopyOption.REPLACE_EXISTING);
        } else {
          Files.move(move.getKey(), target);
          made.add(target);
        }
      }
      whole = true;
    } finally {
      for (Path target : whole ? List.<Path>of() : made) {
        Files.deleteIfExists(target);
      }
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
