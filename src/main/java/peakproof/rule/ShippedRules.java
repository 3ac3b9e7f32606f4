package peakproof.rule;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.TreeBytes;
import peakproof.document.YamlTree;

/**
 * The shipped rules as the build compiled them into the program. A shipped rule whose files have
 * been changed since is not among them.
 */
public final class ShippedRules implements KnownRules {
  /**
   * Beside the rules' classes: the build, each rule to the byte with its model, each file with its
   * tree.
   */
  static final String INDEX = "/peakproof/rules/index";

  private final @Nullable String build;
  private final Map<String, RuleKey> keys = new HashMap<>();
  private final Map<String, CompiledRule> rules = new HashMap<>();
  private final Map<ByteBuffer, byte[]> trees = new HashMap<>();

  private ShippedRules(@Nullable DataInputStream in) throws IOException {
    build = in == null ? null : in.readUTF();
    if (in != null) {
      for (int left = in.readUnsignedShort(); left > 0; left--) {
        RuleKey key = new RuleKey(in.readUTF(), in.readUTF(), bytes(in), bytes(in));
        keys.put(key.slug(), key);
        rules.put(key.slug(), new CompiledRule(Map.of(), List.of(in.readUTF()), in.readBoolean()));
      }
      for (int left = in.readUnsignedShort(); left > 0; left--) {
        trees.put(ByteBuffer.wrap(bytes(in)), bytes(in));
      }
    }
  }

  /** Those of an index. */
  static ShippedRules read(DataInputStream index) throws IOException {
    return new ShippedRules(index);
  }

  private static byte[] bytes(DataInputStream in) throws IOException {
    return in.readNBytes(in.readInt());
  }

  /** Those of this program; none when it runs from classes that no build has finished. */
  public static ShippedRules ofThisProgram() {
    try (InputStream in = ShippedRules.class.getResourceAsStream(INDEX)) {
      return new ShippedRules(in == null ? null : new DataInputStream(new BufferedInputStream(in)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What tells this build from every other; null when no build has finished it. */
  @Nullable String build() {
    return build;
  }

  @Override
  public @Nullable CompiledRule find(RuleKey key) {
    RuleKey shipped = keys.get(key.slug());
    return shipped != null && shipped.matches(key) ? rules.get(key.slug()) : null;
  }

  @Override
  public void keep(RuleKey key, CompiledRule rule) {}

  @Override
  public YamlTree.Parsed tree(String file, byte[] bytes) {
    byte[] known = trees.get(ByteBuffer.wrap(bytes));
    if (known == null) {
      return YamlTree.read(file, bytes);
    }
    try {
      DataInputStream in = new DataInputStream(new ByteArrayInputStream(known));
      return new YamlTree.Parsed(TreeBytes.read(file, in), List.of());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
