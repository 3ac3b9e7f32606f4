package peakproof.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Baseline;
import peakproof.document.Documents;
import peakproof.document.Dossier;

/** The plans as they lie in their folders, read only when somebody asks for one. */
final class PresentPlans implements Baseline.Present {
  private final SinceOptions.Here here;
  private final Map<String, Optional<Baseline.Who>> read = new ConcurrentHashMap<>();

  PresentPlans(SinceOptions.Here here) {
    this.here = here;
  }

  /** A folder that exists, where the first of some paths lies or lay. */
  static Path folder(List<Path> paths) {
    Path folder = paths.get(0).toAbsolutePath().normalize();
    while (folder != null && !Files.isDirectory(folder)) {
      folder = folder.getParent();
    }
    return folder == null ? Path.of("") : folder;
  }

  /** A file as the run names those it finds: absolute where the user's path is, else from here. */
  static String shown(Path file, List<Path> paths) {
    Path start = Path.of("").toAbsolutePath();
    for (Path path : paths) {
      Path real = real(path.toAbsolutePath().normalize());
      if (file.startsWith(real)) {
        Path named = file.equals(real) ? path : path.resolve(real.relativize(file));
        return slashes(named.normalize());
      }
    }
    Path real = real(start);
    return slashes(
        paths.get(0).isAbsolute() || file.getRoot() != real.getRoot()
            ? file
            : real.relativize(file));
  }

  private static Path real(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException absent) {
      return path;
    }
  }

  private static String slashes(Path path) {
    return path.toString().replace(File.separatorChar, '/');
  }

  @Override
  public boolean exists(String plan) {
    return Files.isRegularFile(Path.of(plan));
  }

  @Override
  public Baseline.@Nullable Who who(String plan) {
    return read.computeIfAbsent(plan, this::read).orElse(null);
  }

  private Optional<Baseline.Who> read(String plan) {
    if (!exists(plan)) {
      return Optional.empty();
    }
    Dossier dossier = Documents.read(Path.of(plan), here.options().house()).dossier();
    return Optional.ofNullable(dossier).map(Baseline.Who::of);
  }

  @Override
  public boolean asked(String plan) {
    Path whole = Path.of(plan).toAbsolutePath().normalize();
    return here.paths().stream()
        .anyMatch(path -> whole.startsWith(path.toAbsolutePath().normalize()));
  }
}
