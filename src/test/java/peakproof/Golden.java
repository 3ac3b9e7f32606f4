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
    assertMatches(FOLDER.resolve(file), actual);
  }

  /** The same for a page anywhere in the repository. */
  public static void assertMatches(Path path, String actual) {
    try {
      if ("update".equals(System.getProperty("golden"))) {
        assertThat(System.getenv("CI")).as("golden files are not rewritten in a pipeline").isNull();
        Files.createDirectories(path.getParent());
        Files.writeString(path, actual, StandardCharsets.UTF_8);
      }
      assertThat(path).isRegularFile();
      assertThat(actual).isEqualTo(Files.readString(path, StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Compares what stands in a page after the line {@code begin} up to the line {@code end}. */
  public static void assertMatches(Path page, String begin, String end, String actual) {
    try {
      String text = Files.readString(page, StandardCharsets.UTF_8);
      int from = text.indexOf(begin + "\n");
      int to = text.indexOf("\n" + end + "\n", from);
      assertThat(from).as(begin).isNotNegative();
      assertThat(to).as(end).isNotNegative();
      int start = from + begin.length() + 1;
      assertMatches(page, text.substring(0, start) + actual + text.substring(to));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
