package peakproof.rule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Folders of rules that are read together, each rule once. */
public final class RulePaths {
  private RulePaths() {}

  /**
   * The folders, and those of the others that lie in none before, by whatever way they are named.
   */
  public static List<Path> with(List<Path> folders, List<Path> others) {
    List<Path> all = new ArrayList<>(folders);
    for (Path other : others) {
      if (all.stream().noneMatch(folder -> real(other).startsWith(real(folder)))) {
        all.add(other);
      }
    }
    return List.copyOf(all);
  }

  private static Path real(Path folder) {
    try {
      return folder.toRealPath();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
