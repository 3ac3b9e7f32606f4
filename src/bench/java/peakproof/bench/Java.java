package peakproof.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** One of the Javas that are measured. */
record Java(Path home) {
  static final Path JAR = Path.of("target/peakproof.jar").toAbsolutePath();

  /** The one this runs on. */
  static Java running() {
    return new Java(Path.of(System.getProperty("java.home")));
  }

  /** The one in a folder that somebody named. */
  static Java at(String home) {
    if (!Files.isRegularFile(Path.of(home, "release"))) {
      throw new IllegalArgumentException(
          "-Dbench.java: no Java in '" + home + "'; expected its home, with 'bin' and 'release'");
    }
    return new Java(Path.of(home));
  }

  String version() {
    return said("JAVA_VERSION");
  }

  /** The environment in which the launcher finds this Java. */
  Map<String, String> environment() {
    return Map.of("JAVA_HOME", home.toString());
  }

  /** The launcher with this Java. */
  Command launcher(String... arguments) {
    List<String> words = new ArrayList<>(List.of("./peakproof"));
    words.addAll(List.of(arguments));
    return new Command(words, environment());
  }

  /** Java alone with some flags, and this class path. */
  Command run(List<String> flags, List<Path> classPath, String... rest) {
    List<String> words = new ArrayList<>(List.of(home.resolve("bin/java").toString()));
    words.addAll(flags);
    String separator = System.getProperty("path.separator");
    words.addAll(
        List.of("-cp", String.join(separator, classPath.stream().map(Path::toString).toList())));
    words.addAll(List.of(rest));
    return Command.of(words);
  }

  /** The flag for the archive that the launcher takes; it must have been made. */
  String archive() {
    String version = said("JAVA_RUNTIME_VERSION");
    try (Stream<Path> files = Files.list(JAR.getParent())) {
      Path archive =
          files
              .filter(file -> file.getFileName().toString().contains(version))
              .findFirst()
              .orElseThrow(() -> new IllegalStateException("no archive for Java " + version));
      return (archive.toString().endsWith(".aot") ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=")
          + archive;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String said(String key) {
    try (Stream<String> lines = Files.lines(home.resolve("release"))) {
      return lines
          .filter(line -> line.startsWith(key + "="))
          .map(line -> line.substring(key.length() + 1).replace("\"", ""))
          .findFirst()
          .orElse("unknown");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
