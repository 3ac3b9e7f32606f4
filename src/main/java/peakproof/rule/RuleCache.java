package peakproof.rule;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.YamlTree;

/**
 * A club's rules as classes, kept in a folder between runs. The shipped rules are never taken from
 * it. Others may write there too, so every entry is vetted anew before any of it is defined; one
 * that is broken or does not pass is as good as none, and what is of health is not left to it. That
 * the folder cannot be read or written costs time only.
 */
public final class RuleCache implements KnownRules {
  private static final String ENDING = ".rule";
  private static final int DIGEST = 32;

  /** Larger than the classes of any rule that passes the vetting. */
  private static final int MOST_BYTES = 2 * 1024 * 1024;

  /** Some 50 MB; beyond them the oldest go. */
  private static final int MOST_ENTRIES = 2_000;

  private final Path folder;
  private final KnownRules shipped;
  private final String build;
  private final Supplier<AllowedMembers> allowed;

  /**
   * A cache in a folder, which need not exist yet.
   *
   * @param build tells the program whose classes are kept from every other
   */
  RuleCache(Path folder, KnownRules shipped, String build) {
    this.folder = folder;
    this.shipped = shipped;
    this.build = build;
    this.allowed = Once.of(() -> AllowedMembers.of(FactTypes.shipped()));
  }

  /** The shipped rules and a cache; they alone when no build tells what the classes were for. */
  public static KnownRules of(Path folder, ShippedRules shipped) {
    return shipped.build() == null ? shipped : new RuleCache(folder, shipped, shipped.build());
  }

  @Override
  public @Nullable CompiledRule find(RuleKey key) {
    CompiledRule known = shipped.find(key);
    return known == null ? kept(key) : known;
  }

  private @Nullable CompiledRule kept(RuleKey key) {
    CompiledRule read = read(file(key));
    return read != null && sound(key, read) ? read : null;
  }

  private boolean sound(RuleKey key, CompiledRule read) {
    String home = Engine.packageOf(key.slug());
    return ClassVetting.refusals(allowed.get(), home, read.classes()).isEmpty()
        && !read.models().isEmpty()
        && read.classes().keySet().containsAll(read.models());
  }

  @Override
  public void keep(RuleKey key, CompiledRule rule) {
    Path file = file(key);
    try {
      Files.createDirectories(folder);
      Path draft = Files.createTempFile(folder, key.slug(), ".draft");
      try {
        Files.write(draft, bytes(rule));
        Files.move(
            draft, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(draft);
      }
      forgetTheOldest();
    } catch (IOException | UnsupportedOperationException | SecurityException costsTimeOnly) {
      // Nothing is kept, and the next run compiles again.
    }
  }

  /** Texts are never taken from the folder, where nothing could vet them. */
  @Override
  public YamlTree.Parsed tree(String file, byte[] bytes) {
    return shipped.tree(file, bytes);
  }

  /** One file for each rule of each build under each Java. */
  private Path file(RuleKey key) {
    String all = build + " " + Runtime.version().feature() + " " + key.hash();
    return folder.resolve(RuleKey.hash(all.getBytes(StandardCharsets.UTF_8)) + ENDING);
  }

  private static @Nullable CompiledRule read(Path file) {
    try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
      byte[] bytes = in.readNBytes(MOST_BYTES);
      int end = bytes.length - DIGEST;
      if (end < 0
          || !Arrays.equals(
              RuleKey.digest().digest(Arrays.copyOf(bytes, end)),
              Arrays.copyOfRange(bytes, end, bytes.length))) {
        return null;
      }
      DataInputStream data = new DataInputStream(new ByteArrayInputStream(bytes, 0, end));
      List<String> models = new ArrayList<>();
      for (int left = data.readUnsignedShort(); left > 0; left--) {
        models.add(data.readUTF());
      }
      Map<String, byte[]> classes = new TreeMap<>();
      for (int left = data.readUnsignedShort(); left > 0; left--) {
        classes.put(data.readUTF(), data.readNBytes(data.readInt()));
      }
      return new CompiledRule(classes, models, null);
    } catch (IOException | IllegalArgumentException absentOrBroken) {
      return null;
    }
  }

  private static byte[] bytes(CompiledRule rule) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(bytes);
    data.writeShort(rule.models().size());
    for (String model : rule.models()) {
      data.writeUTF(model);
    }
    data.writeShort(rule.classes().size());
    for (Map.Entry<String, byte[]> each : rule.classes().entrySet()) {
      data.writeUTF(each.getKey());
      data.writeInt(each.getValue().length);
      data.write(each.getValue());
    }
    data.write(RuleKey.digest().digest(bytes.toByteArray()));
    return bytes.toByteArray();
  }

  private void forgetTheOldest() throws IOException {
    List<Path> entries;
    try (Stream<Path> files = Files.list(folder)) {
      entries = files.filter(file -> file.toString().endsWith(ENDING)).toList();
    }
    if (entries.size() > MOST_ENTRIES) {
      List<Path> oldestFirst = new ArrayList<>(entries);
      oldestFirst.sort(Comparator.comparing(RuleCache::written));
      for (Path old : oldestFirst.subList(0, entries.size() - MOST_ENTRIES / 2)) {
        Files.deleteIfExists(old);
      }
    }
  }

  /** Another run may have deleted it in between. */
  private static FileTime written(Path file) {
    try {
      return Files.getLastModifiedTime(file);
    } catch (IOException gone) {
      return FileTime.fromMillis(0);
    }
  }
}
