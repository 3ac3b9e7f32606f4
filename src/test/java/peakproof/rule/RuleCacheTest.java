package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import peakproof.document.YamlTree;

/** What is kept of a club's rules between runs, and what is never taken from there. */
class RuleCacheTest {
  @TempDir private Path folder;
  private Path kept;
  private Watched cache;
  private RuleFiles files;

  @BeforeEach
  void layOut() {
    kept = folder.resolve("cache/rules");
    cache = watched("build 1");
    files = RuleFiles.in(folder.resolve("rules")).with(RuleFiles.sound());
  }

  /** A cache that counts what it is asked for. */
  private static final class Watched implements KnownRules {
    private final RuleCache cache;
    private int hits;
    private int compiled;

    private Watched(RuleCache cache) {
      this.cache = cache;
    }

    @Override
    public @Nullable CompiledRule find(RuleKey key) {
      CompiledRule found = cache.find(key);
      hits += found == null ? 0 : 1;
      return found;
    }

    @Override
    public void keep(RuleKey key, CompiledRule rule) {
      compiled++;
      cache.keep(key, rule);
    }

    @Override
    public YamlTree.Parsed tree(String file, byte[] bytes) {
      return cache.tree(file, bytes);
    }
  }

  private Watched watched(String build) {
    return new Watched(new RuleCache(kept, KnownRules.none(), build));
  }

  private Ruleset load() {
    return RuleFolder.toJudge(List.of(files.root()), cache);
  }

  private void loadsFromItself() {
    cache = watched("build 1");
    Ruleset rules = load();
    assertThat(rules.faults()).isEmpty();
    assertThat(rules.cards()).containsOnlyKeys(RuleFiles.SOUND);
    assertThat(rules.knowledge().get().getKiePackages())
        .anySatisfy(each -> assertThat(each.getRules()).hasSize(1));
    assertThat(cache).extracting(c -> c.hits, c -> c.compiled).containsExactly(1, 0);
  }

  private void compilesAgain() {
    cache = watched("build 1");
    assertThat(load().cards()).containsOnlyKeys(RuleFiles.SOUND);
    assertThat(cache).extracting(c -> c.hits, c -> c.compiled).containsExactly(0, 1);
  }

  @Test
  void compilesARuleOnce() {
    load();
    assertThat(cache.compiled).isEqualTo(1);
    loadsFromItself();
  }

  @Test
  void knowsWhatIsOfHealth() {
    load();
    assertThat(load().ofHealth()).isEmpty();
    files.with(RuleFiles.ofHealth());
    assertThat(load().ofHealth()).containsExactly(RuleFiles.SOUND);
    cache = watched("build 1");
    assertThat(load().ofHealth()).containsExactly(RuleFiles.SOUND);
    assertThat(cache.hits).isEqualTo(1);
  }

  @Test
  void leavesNothingOfHealthToWhoeverMayWriteThere() throws IOException {
    files.with(RuleFiles.ofHealth());
    Path stem = files.root().resolve("swim").resolve(RuleFiles.SOUND);
    RuleKey key =
        new RuleKey(
            "swim",
            RuleFiles.SOUND,
            Files.readAllBytes(Path.of(stem + ".yaml")),
            Files.readAllBytes(Path.of(stem + ".drl")));
    RuleCache entries = new RuleCache(kept, KnownRules.none(), "build 1");
    load();
    CompiledRule entry = entries.find(key);
    entries.keep(key, new CompiledRule(entry.classes(), entry.models(), false));
    cache = watched("build 1");
    assertThat(load().ofHealth()).containsExactly(RuleFiles.SOUND);
    assertThat(cache.hits).isEqualTo(1);
  }

  @Test
  void compilesAgainWhatHasChanged() {
    load();
    Map<String, String> other = RuleFiles.sound();
    other.computeIfPresent(".yaml", (ending, text) -> text.replace("value: 4", "value: 3"));
    files.with(other);
    compilesAgain();
    other.computeIfPresent(".drl", (ending, text) -> text.replace("changeable, ", ""));
    files.with(other);
    compilesAgain();
    loadsFromItself();
  }

  @Test
  void takesNothingOfAnotherBuild() {
    load();
    cache = watched("build 2");
    load();
    assertThat(cache.hits).isZero();
  }

  @Test
  void keepsNoRuleWithAFault() {
    Map<String, String> broken = RuleFiles.sound();
    broken.computeIfPresent(
        ".yaml", (ending, text) -> text.replace("{week.label}", "{week.lable}"));
    files.with(broken);
    assertThat(load().faults()).hasSize(1);
    assertThat(cache.compiled).isZero();
    assertThat(kept).doesNotExist();
  }

  @Test
  void ignoresAnEntryThatIsBrokenAndMendsIt() throws IOException {
    load();
    byte[] sound = Files.readAllBytes(entry());
    for (int at : new int[] {0, sound.length / 2, sound.length - 1}) {
      byte[] bent = sound.clone();
      bent[at] ^= 1;
      Files.write(entry(), bent);
      compilesAgain();
      assertThat(entry()).hasBinaryContent(sound);
    }
    for (int length : new int[] {0, 31, 32, sound.length - 1}) {
      Files.write(entry(), Arrays.copyOf(sound, length));
      compilesAgain();
    }
    loadsFromItself();
  }

  @Test
  void ignoresAnEntryThatWouldDoMoreThanJudge() {
    load();
    String home = Engine.packageOf(RuleFiles.SOUND);
    poison(Map.of(home + ".Rules", trap(home + ".Rules")), home + ".Rules");
    compilesAgain();
    poison(Map.of("peakproof.audit.Judge", trap("peakproof.audit.Judge")), home);
    compilesAgain();
    poison(Map.of(), "peakproof.audit.Judge");
    compilesAgain();
    poison(Map.of(), home + ".Rules");
    compilesAgain();
    loadsFromItself();
    assertThat(System.getProperty(Sprung.TRACE)).isNull();
  }

  /** A class that leaves a trace as soon as it is initialised. */
  private static byte[] trap(String className) {
    ClassWriter trap = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    trap.visit(
        Opcodes.V17,
        Opcodes.ACC_PUBLIC,
        className.replace('.', '/'),
        null,
        "java/lang/Object",
        null);
    MethodVisitor first = trap.visitMethod(Opcodes.ACC_STATIC, "<clinit>", "()V", null, null);
    first.visitLdcInsn(Sprung.TRACE);
    first.visitLdcInsn("yes");
    first.visitMethodInsn(
        Opcodes.INVOKESTATIC,
        "java/lang/System",
        "setProperty",
        "(Ljava/lang/String;Ljava/lang/String;)Ljava/lang/String;",
        false);
    first.visitInsn(Opcodes.POP);
    first.visitInsn(Opcodes.RETURN);
    first.visitMaxs(0, 0);
    trap.visitEnd();
    return trap.toByteArray();
  }

  /** Puts in the entry's place one that is whole, as somebody with the format at hand could. */
  private void poison(Map<String, byte[]> classes, String model) {
    RuleKey key =
        new RuleKey("swim", RuleFiles.SOUND, bytes("boat-swims.yaml"), bytes("boat-swims.drl"));
    new RuleCache(kept, KnownRules.none(), "build 1")
        .keep(key, new CompiledRule(new TreeMap<>(classes), List.of(model), false));
  }

  private byte[] bytes(String name) {
    try {
      return Files.readAllBytes(files.root().resolve("swim").resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void followsNoLink() throws IOException {
    load();
    Path entry = entry();
    Path elsewhere = Files.move(entry, folder.resolve("elsewhere"));
    Files.createSymbolicLink(entry, elsewhere);
    compilesAgain();
  }

  private Path entry() throws IOException {
    try (Stream<Path> entries = Files.list(kept)) {
      List<Path> all = entries.toList();
      assertThat(all).hasSize(1);
      return all.get(0);
    }
  }

  @Test
  void costsOnlyTimeWhereItCannotBeWritten() throws IOException {
    Files.createDirectories(kept.getParent());
    Files.writeString(kept, "a file where the folder should be", StandardCharsets.UTF_8);
    compilesAgain();
    compilesAgain();
  }

  @Test
  void isSharedByRunsAtTheSameTime() throws Exception {
    ExecutorService runs = Executors.newFixedThreadPool(4);
    try {
      Callable<Integer> run =
          () -> RuleFolder.toJudge(List.of(files.root()), watched("build 1")).cards().size();
      for (Future<Integer> each : runs.invokeAll(List.of(run, run, run, run))) {
        assertThat(each.get()).isEqualTo(1);
      }
    } finally {
      runs.shutdown();
    }
    entry();
    loadsFromItself();
  }

  @Test
  void forgetsTheOldestWhenThereAreTooMany() throws IOException {
    Files.createDirectories(kept);
    for (int i = 0; i < 2_000; i++) {
      Path old = Files.writeString(kept.resolve(i + ".rule"), "");
      Files.setLastModifiedTime(old, FileTime.fromMillis(i));
    }
    load();
    try (Stream<Path> left = Files.list(kept)) {
      assertThat(left.map(file -> file.getFileName().toString()).toList())
          .hasSize(1_000)
          .doesNotContain("0.rule", "1000.rule")
          .contains("1001.rule", "1999.rule");
    }
    loadsFromItself();
  }
}
