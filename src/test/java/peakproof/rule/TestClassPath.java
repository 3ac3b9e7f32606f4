package peakproof.rule;

import java.io.File;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where the classes of the tests come from, for a compiler or another process. */
public final class TestClassPath {
  private TestClassPath() {}

  /** A test runner may load classes from elsewhere than its own class path. */
  public static String text() {
    Stream<String> entries =
        TestClassPath.class.getClassLoader() instanceof URLClassLoader loader
            ? Stream.of(loader.getURLs()).map(URL::getPath)
            : Stream.of(System.getProperty("java.class.path").split(File.pathSeparator));
    return entries
        .map(entry -> Path.of(entry).toAbsolutePath().toString())
        .collect(Collectors.joining(File.pathSeparator));
  }
}
