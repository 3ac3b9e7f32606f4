package peakproof.document;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Opens the files that belong to a plan. */
final class DocumentFiles {
  /** One byte over the limit, so that a larger file is seen to be. */
  private static final int BYTES_READ = 2 * 1024 * 1024 + 1;

  private final Faults faults;

  DocumentFiles(Faults faults) {
    this.faults = faults;
  }

  /** How places name a file: as the user gave it, with forward slashes. */
  static String name(Path file) {
    return file.toString().replace(File.separatorChar, '/');
  }

  /** The tree of a file; null, and faults told, when it cannot be read. */
  @Nullable Tree open(Path file) {
    String name = name(file);
    if (!Files.isRegularFile(file)) {
      boolean there = Files.exists(file);
      faults.add(
          new Place(name, 1, 1),
          there ? "this is not a file" : "there is no such file",
          "expected a YAML file",
          there ? "name the file itself" : "check the path" + near(file));
      return null;
    }
    try (InputStream in = Files.newInputStream(file)) {
      YamlTree.Parsed parsed = YamlTree.read(name, in.readNBytes(BYTES_READ));
      faults.addAll(parsed.faults());
      return parsed.tree();
    } catch (IOException e) {
      faults.add(
          new Place(name, 1, 1),
          "this file cannot be opened",
          "expected a file that may be read",
          "check its permissions");
      return null;
    }
  }

  /** The tree of a file named in a plan; null, and a fault told there, when it does not exist. */
  @Nullable Tree openNamed(Path planFile, Tree.Scalar reference) {
    Path file;
    try {
      file = beside(planFile, reference.text().strip());
    } catch (InvalidPathException e) {
      faults.add(
          reference.place(), "this is no file name", "expected the path of a file", "check it");
      return null;
    }
    if (!Files.exists(file)) {
      faults.add(
          reference.place(),
          "there is no file '" + name(file) + "'",
          "expected a path that begins in the folder of the plan",
          "check the path" + near(file));
      return null;
    }
    return open(file);
  }

  /** A path as the plan's folder sees it. */
  static Path beside(Path planFile, String path) {
    return planFile.resolveSibling(path).normalize();
  }

  /** The nearest house file in the folders from the plan's upwards; null when there is none. */
  static @Nullable Path house(Path planFile) {
    Path here = Path.of("").toAbsolutePath();
    Path folder = planFile.toAbsolutePath().normalize().getParent();
    while (folder != null) {
      Path house = folder.resolve("house.yaml");
      if (Files.isRegularFile(house)) {
        return planFile.isAbsolute() ? house : here.relativize(house);
      }
      folder = folder.getParent();
    }
    return null;
  }

  private static String near(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    Path last = file.getFileName();
    if (folder == null || last == null || !Files.isDirectory(folder)) {
      return "";
    }
    try (Stream<Path> files = Files.list(folder)) {
      List<String> names = files.map(Path::getFileName).map(Path::toString).sorted().toList();
      String near = Nearest.among(last.toString(), names);
      return near == null ? "" : ": did you mean '" + near + "'?";
    } catch (IOException e) {
      return "";
    }
  }
}
