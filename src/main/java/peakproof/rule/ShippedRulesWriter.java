package peakproof.rule;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.TreeBytes;
import peakproof.document.YamlTree;

/** The step of the build that compiles the shipped rules into the program's classes. */
public final class ShippedRulesWriter implements KnownRules {
  private final Path classes;
  private final Map<String, RuleKey> keys = new TreeMap<>();
  private final Map<String, CompiledRule> rules = new TreeMap<>();
  private final Map<ByteBuffer, byte[]> trees = new TreeMap<>();

  private ShippedRulesWriter(Path classes) {
    this.classes = classes;
  }

  /**
   * Compiles a folder of rules into a folder of classes.
   *
   * @param arguments the folder of rules, that of the classes, and the engine's version
   */
  public static void main(String[] arguments) {
    Ruleset rules = write(Path.of(arguments[0]), Path.of(arguments[1]), arguments[2]);
    if (!rules.faults().isEmpty()) {
      throw new IllegalStateException("the shipped rules are wrong: " + rules.faults());
    }
  }

  static Ruleset write(Path rules, Path classes, String engine) {
    try {
      delete(classes.resolve("peakproof/rules"));
      ShippedRulesWriter writer = new ShippedRulesWriter(classes);
      String build = build(classes, engine);
      Ruleset read = RuleFolder.toJudge(List.of(rules), writer);
      put(classes.resolve(ShippedRules.INDEX.substring(1)), writer.index(build));
      return read;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public @Nullable CompiledRule find(RuleKey key) {
    return null;
  }

  @Override
  public void keep(RuleKey key, CompiledRule rule) {
    keys.put(key.slug(), key);
    rules.put(key.slug(), rule);
    rule.classes().forEach((name, bytes) -> put(classes.resolve(file(name)), bytes));
  }

  @Override
  public YamlTree.Parsed tree(String file, byte[] bytes) {
    YamlTree.Parsed parsed = YamlTree.read(file, bytes);
    if (parsed.tree() != null && parsed.faults().isEmpty()) {
      ByteArrayOutputStream tree = new ByteArrayOutputStream();
      try {
        TreeBytes.write(parsed.tree(), new DataOutputStream(tree));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      trees.put(ByteBuffer.wrap(bytes), tree.toByteArray());
    }
    return parsed;
  }

  private byte[] index(String build) throws IOException {
    ByteArrayOutputStream index = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(index);
    out.writeUTF(build);
    out.writeShort(keys.size());
    for (RuleKey key : keys.values()) {
      out.writeUTF(key.theme());
      out.writeUTF(key.slug());
      bytes(key.card(), out);
      bytes(key.logic(), out);
      CompiledRule rule = Objects.requireNonNull(rules.get(key.slug()));
      out.writeUTF(String.join(" ", rule.models()));
      out.writeBoolean(Objects.requireNonNull(rule.ofHealth()));
    }
    out.writeShort(trees.size());
    for (Map.Entry<ByteBuffer, byte[]> tree : trees.entrySet()) {
      bytes(tree.getKey().array(), out);
      bytes(tree.getValue(), out);
    }
    return index.toByteArray();
  }

  private static void bytes(byte[] bytes, DataOutputStream out) throws IOException {
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  private static String file(String className) {
    return className.replace('.', '/') + ".class";
  }

  /** Everything that shapes what becomes of a rule: this program's classes and the engine. */
  private static String build(Path classes, String engine) throws IOException {
    MessageDigest digest = RuleKey.digest();
    digest.update(engine.getBytes(StandardCharsets.UTF_8));
    try (Stream<Path> files = Files.walk(classes)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        digest.update(classes.relativize(file).toString().getBytes(StandardCharsets.UTF_8));
        digest.update(Files.readAllBytes(file));
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static void put(Path file, byte[] bytes) {
    try {
      Files.createDirectories(file.resolveSibling(""));
      Files.write(file, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> old = Files.walk(folder)) {
        for (Path file : old.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }
}
