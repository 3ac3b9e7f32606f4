package peakproof.document;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * A folder a document names by its way down from the document's own folder. A document may come
 * from a stranger, so the way leads nowhere else: not up, not away, not through a link.
 */
final class FolderBelow {
  /** A name of a folder on every system: no dot in front, no drive, no backslash. */
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_][A-Za-z0-9_. -]{0,99}");

  private static final String EXPECTED = "expected a folder below that of this file";

  private FolderBelow() {}

  /** The folder, as the document's own path leads to it. */
  static Quantity<Path> of(Path document, String way) {
    Path folder = document;
    try {
      for (String name : way.replaceFirst("/$", "").split("/", -1)) {
        if (!NAME.matcher(name).matches()) {
          return not(
              "'" + way + "' is no way down to a folder", "write it such as our-rules, without ..");
        }
        folder = folder.equals(document) ? document.resolveSibling(name) : folder.resolve(name);
        if (Files.isSymbolicLink(folder)) {
          return not("'" + way + "' leads through a link", "put the rules themselves there");
        }
      }
    } catch (InvalidPathException e) {
      return not("'" + way + "' is no name of a folder", "write it such as our-rules");
    }
    return Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)
        ? new Quantity.Of<>(folder)
        : not(
            "there is no folder '" + way + "'",
            "begin it with 'peakproof rules new', or take the entry out");
  }

  private static Quantity<Path> not(String what, String instead) {
    return new Quantity.NotThat<>(what, EXPECTED, instead);
  }
}
