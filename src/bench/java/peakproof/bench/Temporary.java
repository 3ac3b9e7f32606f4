package peakproof.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder that is gone afterwards, with all that was put into it: ten thousand plans are many. */
public record Temporary(Path path) implements AutoCloseable {
  /** A new one. */
  public static Temporary folder() throws IOException {
    return new Temporary(Files.createTempDirectory("peakproof-bench"));
  }

  @Override
  public void close() throws IOException {
    List<Path> deepestFirst;
    try (Stream<Path> all = Files.walk(path)) {
      deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path each : deepestFirst) {
      Files.delete(each);
    }
  }
}
