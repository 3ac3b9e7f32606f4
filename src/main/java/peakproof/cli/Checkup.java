package peakproof.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Documents;

/** Looks at what this program needs of the machine around it, one thing after the other. */
final class Checkup {
  private static final int OLDEST_JAVA = 17;
  private static final int NEWEST_JAVA = 25;

  private final Surroundings surroundings;

  Checkup(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /** How one thing is. */
  enum State {
    /** As it should be. */
    FINE,
    /** The audit works all the same, but something would be better otherwise. */
    LOOK,
    /** Something does not work. */
    WRONG
  }

  /**
   * What was found of one thing.
   *
   * @param advice what to do about it; null when there is nothing
   */
  record Found(String thing, State state, String what, @Nullable String advice) {
    static Found fine(String thing, String what) {
      return new Found(thing, State.FINE, what, null);
    }

    static Found look(String thing, String what, String advice) {
      return new Found(thing, State.LOOK, what, advice);
    }
  }

  Found java() {
    int major = Runtime.version().feature();
    String what = Runtime.version() + " at " + System.getProperty("java.home");
    return major <= NEWEST_JAVA
        ? Found.fine("Java", what)
        : Found.look(
            "Java",
            what,
            "newer than what is tested, "
                + OLDEST_JAVA
                + " to "
                + NEWEST_JAVA
                + "; take one of these if something fails");
  }

  /** Tries to write there, as permissions do not tell everything. */
  Found cache() {
    Path folder = CacheFolder.of(surroundings);
    if (folder == null) {
      return Found.look(
          "cache",
          "nothing says where",
          "set HOME or XDG_CACHE_HOME to a folder of yours; till then a club's own rules are"
              + " compiled at every start");
    }
    try {
      Files.createDirectories(folder);
      Files.delete(Files.createTempFile(folder, "doctor", null));
      return Found.fine("cache", folder + ", " + size(folder));
    } catch (IOException | UncheckedIOException | SecurityException refused) {
      return Found.look(
          "cache",
          "cannot write in " + folder,
          "make it a folder that may be written, or set XDG_CACHE_HOME to one; till then a club's"
              + " own rules are compiled at every start");
    }
  }

  private static String size(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return megabytes(
          files.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum());
    }
  }

  private static String megabytes(long bytes) {
    return String.format(Locale.ROOT, "%.1f MB", bytes / 1e6);
  }

  /** The launcher names the archive by the Java it found, so that another's is never taken. */
  Found archive() {
    String named = surroundings.variable("PEAKPROOF_ARCHIVE");
    if (named == null) {
      return Found.look(
          "archive", "not looked for", "start the program by the launcher 'peakproof'");
    }
    try {
      Path archive = Path.of(named);
      return Files.isRegularFile(archive)
          ? Found.fine("archive", archive + ", " + megabytes(archive.toFile().length()))
          : Found.look(
              "archive",
              "none of this Java's",
              "'peakproof warm' makes it; till then starts are slower, nothing else");
    } catch (InvalidPathException e) {
      return Found.look("archive", "its name is none", "start the program by the launcher");
    }
  }

  /** File names are read by the locale; what is printed is UTF-8 in any. */
  Found text(int width) {
    String encoding = System.getProperty("sun.jnu.encoding", "unknown");
    String what =
        "file names in "
            + encoding
            + ", "
            + width
            + " columns"
            + (surroundings.terminal() ? "" : " (no terminal)");
    return encoding.toUpperCase(Locale.ROOT).replace("-", "").equals("UTF8")
        ? Found.fine("text", what)
        : Found.look(
            "text",
            what,
            "set LC_ALL to C.UTF-8, else files with other names than English ones are not found");
  }

  Found git() {
    String version = OtherProgram.answer(Path.of("").toAbsolutePath(), List.of("git", "--version"));
    return version == null
        ? Found.look("git", "none", "needed only where a pipeline audits what a change touches")
        : Found.fine("git", version.replaceFirst("^git version ", ""));
  }

  Found house() {
    Path house = Documents.houseFrom(Path.of(""));
    return house == null
        ? Found.look(
            "house",
            "no house.yaml in this folder or above",
            "nothing, unless the club's numbers are to count: a plan takes the nearest above it")
        : Found.fine("house", house.toString());
  }
}
