package peakproof.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Writes down, for the build, which commit is built. Where there is no git, or no repository, it
 * writes nothing, so that the same sources still give the same program.
 */
public final class CommitWriter {
  private CommitWriter() {}

  /**
   * Writes the file, or takes an older one away.
   *
   * @param arguments the folder of the sources, and that of the classes
   */
  public static void main(String[] arguments) throws IOException {
    Path target = Path.of(arguments[1]).resolve("peakproof/cli/commit.txt");
    String commit = commit(Path.of(arguments[0]));
    if (commit == null) {
      Files.deleteIfExists(target);
    } else {
      Files.writeString(target, commit + "\n", StandardCharsets.UTF_8);
    }
  }

  /** The commit, and whether the sources were changed since; null when nothing knows. */
  static @Nullable String commit(Path folder) {
    Path top = folder.toAbsolutePath().normalize();
    String commit = git(top, "rev-parse", "--short=12", "HEAD");
    String root = git(top, "rev-parse", "--show-toplevel");
    // Sources that were unpacked inside some other repository are not that one's.
    if (commit == null || root == null || !Path.of(root).equals(top)) {
      return null;
    }
    String changed = git(top, "status", "--porcelain", "--untracked-files=no");
    return changed == null || changed.isEmpty() ? commit : commit + ", changed since";
  }

  private static @Nullable String git(Path folder, String... arguments) {
    return OtherProgram.answer(
        folder, Stream.concat(Stream.of("git"), Stream.of(arguments)).toList());
  }
}
