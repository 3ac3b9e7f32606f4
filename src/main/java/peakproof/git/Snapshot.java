package peakproof.git;

import java.io.Closeable;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The files of a revision, laid out in a folder of their own that nobody else can read and that
 * goes with this.
 */
public final class Snapshot implements Closeable {
  private final Path top;
  private final Path folder;
  private final Path files;

  Snapshot(Path top, Path folder, Path files) {
    this.top = top;
    this.folder = folder;
    this.files = files;
  }

  /** What comes of wanting one. */
  public sealed interface Outcome {
    /** The files are there. */
    record Taken(Snapshot snapshot) implements Outcome {}

    /** They are not; {@code why} says what helps. */
    record Refused(String why) implements Outcome {}
  }

  /**
   * Takes the YAML and rule files of a revision out of the repository around a folder.
   *
   * @param revision as git names one, such as {@code main}, {@code HEAD^1} or a hash
   */
  public static Outcome take(Path folder, String revision) {
    return new Taking("git", folder, revision).take();
  }

  /** The folder in which the repository's files lie as they were. */
  public Path files() {
    return files;
  }

  /** Where a file or folder lies in the snapshot, there or not; null outside the repository. */
  public @Nullable Path earlier(Path now) {
    Path real = real(now);
    return real.startsWith(top) ? files.resolve(top.relativize(real)) : null;
  }

  /** Where a file or folder of the snapshot lies in the repository, there or not. */
  public Path now(Path earlier) {
    return top.resolve(files.relativize(earlier));
  }

  /** True when a file, or any in a folder, is another than it was; line ends do not count. */
  public boolean changed(Path now) {
    Path then = earlier(now);
    if (then == null) {
      return false;
    }
    if (!Files.isDirectory(now) && !Files.isDirectory(then)) {
      return !same(now, then);
    }
    TreeSet<Path> names = new TreeSet<>(within(now));
    names.addAll(within(then));
    return names.stream().anyMatch(name -> !same(now.resolve(name), then.resolve(name)));
  }

  private static List<Path> within(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> Taking.wanted(file.toString()) && Files.isRegularFile(file))
          .map(folder::relativize)
          .toList();
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  private static boolean same(Path now, Path then) {
    boolean isNow = Files.isRegularFile(now);
    boolean was = Files.isRegularFile(then);
    if (!isNow || !was) {
      return isNow == was;
    }
    try {
      return Arrays.equals(content(now), content(then));
    } catch (IOException unreadable) {
      return false;
    }
  }

  /** Git may keep other line ends than lie in the folder. */
  private static byte[] content(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    int length = 0;
    for (int i = 0; i < bytes.length; i++) {
      boolean before = bytes[i] == '\r' && i + 1 < bytes.length && bytes[i + 1] == '\n';
      if (!before) {
        bytes[length++] = bytes[i];
      }
    }
    return Arrays.copyOf(bytes, length);
  }

  /** The path without links, as far as it exists. */
  private static Path real(Path path) {
    Path whole = path.toAbsolutePath().normalize();
    List<Path> missing = new ArrayList<>();
    for (Path there = whole; there != null; there = there.getParent()) {
      try {
        Path real = there.toRealPath();
        for (int i = missing.size() - 1; i >= 0; i--) {
          real = real.resolve(missing.get(i));
        }
        return real;
      } catch (IOException absent) {
        Path name = there.getFileName();
        if (name != null) {
          missing.add(name);
        }
      }
    }
    return whole;
  }

  @Override
  public void close() {
    delete(folder);
  }

  /** What cannot be deleted is left to the system, which clears such folders. */
  static void delete(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
    } catch (IOException gone) {
      folder.toFile().deleteOnExit();
    }
  }
}
