package peakproof.rule;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Place;

/**
 * What lies in a folder of rules. The folder may come from a stranger, so nothing in it is followed
 * that leads out of it, and only plain files with plain names are opened.
 */
final class RuleListing {
  static final String CASES = ".cases.yaml";
  static final String CARD = ".yaml";
  static final String LOGIC = ".drl";

  /** More than a card or its cases ever need; what is larger is not read to its end. */
  private static final int MOST_BYTES = 2 * 1024 * 1024 + 1;

  private static final String BASE = "base";

  /** In house and plan this word stands for the measures. */
  private static final String MEASURES = "measures";

  private final List<Fault> faults;
  private final List<Stem> stems = new ArrayList<>();

  private RuleListing(List<Fault> faults) {
    this.faults = faults;
  }

  /**
   * The files of one rule.
   *
   * @param path the files' path without their endings
   * @param endings which of the three there are
   */
  record Stem(String slug, String theme, Path path, Set<String> endings) {
    Path file(String ending) {
      return Path.of(path + ending);
    }
  }

  /** The rules of a folder in the order of their names; what has no place there is a fault. */
  static List<Stem> of(Path root, List<Fault> faults) {
    RuleListing listing = new RuleListing(faults);
    for (Path entry : listing.list(root)) {
      String name = name(entry);
      if (!Files.isDirectory(entry)) {
        if (ending(name) != null && !name.endsWith(CARD) || name.endsWith(CASES)) {
          listing.fault(
              entry,
              "'" + name + "' lies in no theme's folder",
              "a folder for each theme, with the rules in it",
              "move it to a folder such as swim");
        }
      } else if (!name.equals(BASE) && listing.plain(name, entry)) {
        listing.theme(name, entry);
      }
    }
    return listing.stems;
  }

  private void theme(String theme, Path folder) {
    Map<String, Set<String>> found = new TreeMap<>();
    for (Path file : list(folder)) {
      String name = name(file);
      String ending = ending(name);
      if (Files.isDirectory(file)) {
        fault(
            file,
            "'" + name + "' is a folder in a theme's folder",
            "rules lie right below their theme",
            "move its rules up, or the folder out");
      } else if (ending != null
          && plain(name.substring(0, name.length() - ending.length()), file)) {
        found
            .computeIfAbsent(
                name.substring(0, name.length() - ending.length()), slug -> new TreeSet<>())
            .add(ending);
      }
    }
    found.forEach(
        (slug, endings) -> stems.add(new Stem(slug, theme, folder.resolve(slug), endings)));
  }

  private static @Nullable String ending(String name) {
    return Stream.of(CASES, CARD, LOGIC).filter(name::endsWith).findFirst().orElse(null);
  }

  private boolean plain(String name, Path at) {
    boolean plain = CardSettings.NAME.matcher(name).matches() && !name.equals(MEASURES);
    if (!plain) {
      fault(
          at,
          "'" + name + "' is no name for a rule or theme",
          "up to 60 small letters, digits and hyphens, a letter first; not 'measures'",
          "swim-open-water-weekly");
    }
    return plain;
  }

  /** Files and folders, sorted; hidden ones are left alone, links and devices are faults. */
  private List<Path> list(Path folder) {
    List<Path> plain = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        if (name(file).startsWith(".")) {
          continue;
        }
        if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)
            || Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
          plain.add(file);
        } else {
          fault(
              file,
              "'" + name(file) + "' is a link or a device",
              "plain files, so that a folder of rules reaches nothing outside it",
              "copy there what it points to");
        }
      }
    } catch (IOException e) {
      unreadable(folder, e, faults);
    }
    return plain;
  }

  private static String name(Path path) {
    return String.valueOf(path.getFileName());
  }

  /** A file's bytes, the first 2 MiB of them; null with a fault when it cannot be read. */
  static byte @Nullable [] bytes(Path file, List<Fault> faults) {
    try {
      return read(file);
    } catch (IOException e) {
      unreadable(file, e, faults);
      return null;
    }
  }

  /** The bytes of a shipped file, without which nothing runs. */
  static byte[] bytes(Path file) {
    try {
      return read(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] read(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
      return in.readNBytes(MOST_BYTES);
    }
  }

  private static void unreadable(Path file, IOException e, List<Fault> faults) {
    faults.add(
        new Fault(
            place(file),
            "this cannot be read (" + e.getClass().getSimpleName() + ")",
            "a file this user may read",
            "check who may read it"));
  }

  private void fault(Path file, String what, String expected, String instead) {
    faults.add(new Fault(place(file), what, expected, instead));
  }

  /** The top of a file, named with slashes on every system. */
  static Place place(Path file) {
    return new Place(slashes(file), 1, 1);
  }

  static String slashes(Path path) {
    return path.toString().replace('\\', '/');
  }
}
