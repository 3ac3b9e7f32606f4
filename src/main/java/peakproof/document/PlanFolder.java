package peakproof.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;

/** Searches a folder for plans. */
final class PlanFolder extends SimpleFileVisitor<Path> {
  /** Enough for any heading of comments above a first key. */
  private static final int HEAD = 64 * 1024;

  private final Path root;
  private final List<Path> plans = new ArrayList<>();

  private PlanFolder(Path root) {
    this.root = root;
  }

  /** The plans, sorted by path; links are followed, but never round in a circle. */
  static List<Path> search(Path folder) {
    PlanFolder search = new PlanFolder(folder);
    try {
      Files.walkFileTree(
          folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), Integer.MAX_VALUE, search);
    } catch (IOException e) {
      return List.of();
    }
    return search.plans.stream()
        .map(Path::normalize)
        .sorted(Comparator.comparing(DocumentFiles::name))
        .toList();
  }

  @Override
  public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
    boolean hidden = !folder.equals(root) && startsWithDot(folder);
    return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
    String name = file.toString();
    boolean yaml = name.endsWith(".yaml") || name.endsWith(".yml");
    if (yaml && attributes.isRegularFile() && Files.isReadable(file) && isPlan(file)) {
      plans.add(file);
    }
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFileFailed(Path file, IOException failure) {
    return FileVisitResult.CONTINUE;
  }

  private static boolean startsWithDot(Path folder) {
    Path name = folder.getFileName();
    return name != null && name.toString().startsWith(".");
  }

  private static boolean isPlan(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return DocumentKind.PLAN.begins(new String(in.readNBytes(HEAD), StandardCharsets.UTF_8));
    }
  }
}
