package peakproof.document;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which files and folders decide what is read of a plan; whether they are right plays no part. */
final class PlanSources {
  private final DocumentFiles files = new DocumentFiles(new Faults());
  private final List<Path> sources = new ArrayList<>();

  private PlanSources() {}

  static List<Path> of(Path planFile, @Nullable Path house) {
    PlanSources all = new PlanSources();
    all.sources.add(planFile);
    all.sources.add(planFile.resolveSibling("log.yaml"));
    Tree.Entry plan = all.content(planFile, "plan");
    all.add(planFile, plan == null ? null : plan.value().entry("log"));
    all.add(planFile, plan == null ? null : plan.value().entry("event"));
    if (house != null) {
      all.sources.add(house);
      Tree.Entry content = all.content(house, "house");
      Tree.Entry own = content == null ? null : content.value().entry("own-rules");
      if (own != null && own.value() instanceof Tree.Sequence folders) {
        folders.items().forEach(folder -> all.add(house, folder));
      }
    }
    return all.sources;
  }

  private Tree.@Nullable Entry content(Path file, String kind) {
    Tree tree = files.open(file);
    return tree == null ? null : tree.entry(kind);
  }

  private void add(Path from, Tree.@Nullable Entry entry) {
    if (entry != null) {
      add(from, entry.value());
    }
  }

  private void add(Path from, Tree name) {
    if (name instanceof Tree.Scalar scalar) {
      try {
        sources.add(DocumentFiles.beside(from, scalar.text().strip()));
      } catch (InvalidPathException noFile) {
        return;
      }
    }
  }
}
