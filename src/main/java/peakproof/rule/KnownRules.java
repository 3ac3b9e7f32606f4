package peakproof.rule;

import org.jspecify.annotations.Nullable;
import peakproof.document.YamlTree;

/** Rules that were found sound and compiled before, by what they were made of. */
public interface KnownRules {
  /** The rule of a key, or null. */
  @Nullable CompiledRule find(RuleKey key);

  /** Keeps a rule for the next time, if it can. */
  void keep(RuleKey key, CompiledRule rule);

  /** What a YAML file of the rules holds, read anew unless it is known. */
  YamlTree.Parsed tree(String file, byte[] bytes);

  /** Knows nothing and keeps nothing. */
  static KnownRules none() {
    return new KnownRules() {
      @Override
      public @Nullable CompiledRule find(RuleKey key) {
        return null;
      }

      @Override
      public void keep(RuleKey key, CompiledRule rule) {}

      @Override
      public YamlTree.Parsed tree(String file, byte[] bytes) {
        return YamlTree.read(file, bytes);
      }
    };
  }
}
