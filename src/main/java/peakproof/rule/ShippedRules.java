package peakproof.rule;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
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
  /** Beside the rules' classes: the build, each rule's key with its model, each file's tree. */
  static final String INDEX = "/peakproof/rules/index";

  private final @Nullable String build;
  private final Map<String, String> models = new HashMap<>();
  private final Map<String, byte[]> trees = new HashMap<>();

  private ShippedRules(@Nullable DataInputStream in) throws IOException {
    build = in == null ? null : in.readUTF();
    if (in != null) {
      for (int left = in.readUnsignedShort(); left > 0; left--) {
        models.put(in.readUTF(), in.readUTF());
      }
      for (int left = in.readUnsignedShort(); left > 0; left--) {
        trees.put(in.readUTF(), in.readNBytes(in.readInt()));
      }
    }
  }

  /** Those of this program; none when it runs from classes that no build has finished. */
  public static ShippedRules ofThisProgram() {
    try (InputStream in = ShippedRules.class.getResourceAsStream(INDEX)) {
      return new ShippedRules(
          in == null ? null : new DataInputStream(new BufferedInputStream(in)));
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
    String model = models.get(key.hash());
    return model == null ? null : new CompiledRule(Map.of(), List.of(model));
  }

  @Override
  public void keep(RuleKey key, CompiledRule rule) {}

  @Override
  public YamlTree.Parsed tree(String file, byte[] bytes, String hash) {
    byte[] known = trees.get(hash);
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
