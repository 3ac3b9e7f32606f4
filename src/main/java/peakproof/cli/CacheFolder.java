package peakproof.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Where what can be made again is kept for this user. */
final class CacheFolder {
  private static final String NAME = "peakproof";

  private CacheFolder() {}

  /**
   * {@code $XDG_CACHE_HOME/peakproof}, on Windows {@code %LOCALAPPDATA%\peakproof}, else {@code
   * ~/.cache/peakproof}; null when nothing says where the user's home is.
   */
  static @Nullable Path of(Surroundings surroundings) {
    Path folder = absolute(surroundings.variable("XDG_CACHE_HOME"));
    if (folder == null) {
      folder = absolute(surroundings.variable("LOCALAPPDATA"));
    }
    if (folder == null) {
      Path home = absolute(surroundings.variable("HOME"));
      folder = home == null ? null : home.resolve(".cache");
    }
    return folder == null ? null : folder.resolve(NAME);
  }

  /** A relative path is none, as the convention for these variables has it. */
  private static @Nullable Path absolute(@Nullable String path) {
    try {
      return path != null && Path.of(path).isAbsolute() ? Path.of(path) : null;
    } catch (InvalidPathException e) {
      return null;
    }
  }
}
