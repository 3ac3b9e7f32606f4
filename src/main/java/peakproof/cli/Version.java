package peakproof.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.IVersionProvider;

/** The program's name and version and what it is made of, as the build wrote it down. */
final class Version implements IVersionProvider {
  private static final List<String> BUILT = lines("version.txt");

  static final String PROGRAM = "peakproof " + BUILT.get(0);

  private final Path home;

  /** Of this process. */
  Version() {
    this(Surroundings.ofThisProcess().home());
  }

  /** With the rules of a home folder. */
  Version(Path home) {
    this.home = home;
  }

  @Override
  public String[] getVersion() {
    List<String> commit = Version.class.getResource("commit.txt") == null ? List.of() : commit();
    return Stream.of(
            Stream.of(PROGRAM),
            commit.stream(),
            Stream.of("Java " + Runtime.version() + ", Drools " + BUILT.get(1), rules()))
        .flatMap(lines -> lines)
        .toArray(String[]::new);
  }

  /** Only a build from a git repository knows its commit. */
  private static List<String> commit() {
    return List.of("commit " + lines("commit.txt").get(0));
  }

  private String rules() {
    Path folder = home.resolve("rules");
    Long count = count(folder);
    return count == null ? "no rules at " + folder : count + (count == 1 ? " rule" : " rules");
  }

  private static @Nullable Long count(Path folder) {
    if (!Files.isDirectory(folder)) {
      return null;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".drl")).count();
    } catch (IOException unreadable) {
      return null;
    }
  }

  private static List<String> lines(String resource) {
    try (InputStream text = Version.class.getResourceAsStream(resource)) {
      if (text == null) {
        throw new IllegalStateException("the build left out " + resource);
      }
      return new String(text.readAllBytes(), StandardCharsets.UTF_8).strip().lines().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
