package peakproof.rule;

import java.nio.file.Path;
import peakproof.document.Tree;
import peakproof.document.YamlTree;

/** The sound plan, event and log that all cases are small changes of. */
record CaseBase(Tree plan, Tree event, Tree log) {
  static CaseBase read(Path folder) {
    return new CaseBase(tree(folder, "plan"), tree(folder, "event"), tree(folder, "log"));
  }

  private static Tree tree(Path folder, String kind) {
    Path file = folder.resolve(kind + ".yaml");
    YamlTree.Parsed parsed = YamlTree.read(RuleListing.slashes(file), RuleListing.bytes(file));
    if (parsed.tree() == null || !parsed.faults().isEmpty()) {
      throw new IllegalStateException("the base document is wrong: " + parsed.faults());
    }
    return parsed.tree();
  }
}
