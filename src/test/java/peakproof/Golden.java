package peakproof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares output with a file kept under {@code src/test/resources}. {@code -Dgolden=update}
 * rewrites the files, for a person to read the difference; a pipeline (CI set) refuses it.
 */
public final class Golden {
  private static final Path FOLDER = Path.of("src/test/resources/peakproof");

  private Golden() {}

  public static void assertMatches(String file, String actual) {
    Path path = FOLDER.resolve(file);
    try {
      if ("update".equals(System.getProperty("golden"))) {
        assertThat(System.getenv("CI")).as("golden files are not rewritten in a pipeline").isNull();
        Files.createDirectories(path.getParent());
        Files.writeString(path, actual, StandardCharsets.UTF_8);
      }
      assertThat(actual).isEqualTo(Files.readString(path, StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
