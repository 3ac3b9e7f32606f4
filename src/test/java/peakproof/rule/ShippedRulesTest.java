package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.document.Tree;
import peakproof.document.TreeBytes;
import peakproof.document.YamlTree;

/** The shipped rules as the build puts them into the program. */
class ShippedRulesTest {
  @TempDir private Path folder;
  private Path classes;
  private RuleFiles files;

  @BeforeEach
  void layOut() throws IOException {
    classes = Files.createDirectories(folder.resolve("classes"));
    Files.writeString(classes.resolve("Program.class"), "the program");
    files = RuleFiles.in(folder.resolve("rules")).with(RuleFiles.sound());
  }

  private Map<String, String> write(Path to, String engine) throws IOException {
    assertThat(ShippedRulesWriter.write(files.root(), to, engine).faults()).isEmpty();
    Map<String, String> written = new TreeMap<>();
    try (Stream<Path> all = Files.walk(to)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        written.put(to.relativize(file).toString().replace('\\', '/'), text);
      }
    }
    return written;
  }

  private ShippedRules shipped() throws IOException {
    try (InputStream in = Files.newInputStream(classes.resolve("peakproof/rules/index"))) {
      return ShippedRules.read(new DataInputStream(in));
    }
  }

  private RuleKey key() throws IOException {
    Path stem = files.root().resolve("swim").resolve(RuleFiles.SOUND);
    return new RuleKey(
        "swim",
        RuleFiles.SOUND,
        Files.readAllBytes(Path.of(stem + ".yaml")),
        Files.readAllBytes(Path.of(stem + ".drl")));
  }

  @Test
  void areTheSameFromTheSameFiles() throws IOException {
    Map<String, String> first = write(classes, "10");
    assertThat(first).containsKey("peakproof/rules/index").hasSizeGreaterThan(3);
    assertThat(write(classes, "10")).isEqualTo(first);
    Path other = Files.createDirectories(folder.resolve("other"));
    Files.writeString(other.resolve("Program.class"), "the program");
    assertThat(write(other, "10")).isEqualTo(first);
  }

  @Test
  void tellOneBuildFromAnother() throws IOException {
    write(classes, "10");
    String build = shipped().build();
    write(classes, "11");
    assertThat(shipped().build()).isNotEqualTo(build);
    write(classes, "10");
    assertThat(shipped().build()).isEqualTo(build);
    Files.writeString(classes.resolve("Program.class"), "another program");
    write(classes, "10");
    assertThat(shipped().build()).isNotEqualTo(build);
  }

  @Test
  void areFoundWhileTheirFilesAreAsShipped() throws IOException {
    write(classes, "10");
    ShippedRules shipped = shipped();
    CompiledRule found = Objects.requireNonNull(shipped.find(key()));
    assertThat(found.classes()).isEmpty();
    assertThat(found.models()).hasSize(1);
    assertThat(classes.resolve(found.models().get(0).replace('.', '/') + ".class")).exists();
    Map<String, String> other = RuleFiles.sound();
    other.computeIfPresent(".yaml", (ending, text) -> text.replace("value: 4", "value: 3"));
    files.with(other);
    assertThat(shipped.find(key())).isNull();
  }

  @Test
  void remainOfHealth() throws IOException {
    write(classes, "10");
    assertThat(shipped().find(key())).isNotNull().matches(rule -> !rule.ofHealth());
    files.with(RuleFiles.ofHealth());
    write(classes, "10");
    assertThat(shipped().find(key())).isNotNull().matches(CompiledRule::ofHealth);
  }

  @Test
  void areLeftOutOfAProgramThatNoBuildHasFinished() throws IOException {
    ShippedRules none = ShippedRules.ofThisProgram();
    assertThat(none.build()).isNull();
    assertThat(none.find(key())).isNull();
    assertThat(RuleCache.of(folder, none)).isSameAs(none);
  }

  @Test
  void haveTheirCardsAtHandAsTheYamlSays() throws IOException {
    write(classes, "10");
    ShippedRules shipped = shipped();
    byte[] card = key().card();
    assertThat(shown(shipped.tree("other.yaml", card)))
        .isEqualTo(shown(YamlTree.read("other.yaml", card)));
    byte[] unknown = "plan: [1, {a: ~}]".getBytes(StandardCharsets.UTF_8);
    assertThat(shown(shipped.tree("x.yaml", unknown)))
        .isEqualTo(shown(YamlTree.read("x.yaml", unknown)));
  }

  @Test
  void keepEveryCardTreeThroughBytes() throws IOException {
    try (Stream<Path> all = Files.walk(Path.of("rules"))) {
      for (Path file : all.filter(each -> each.toString().endsWith(".yaml")).toList()) {
        Tree tree = Objects.requireNonNull(YamlTree.read("f", Files.readAllBytes(file)).tree());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        TreeBytes.write(tree, new DataOutputStream(bytes));
        byte[] written = bytes.toByteArray();
        Tree read = TreeBytes.read("f", new DataInputStream(new ByteArrayInputStream(written)));
        assertThat(shown(read)).isEqualTo(shown(tree));
      }
    }
  }

  private static String shown(YamlTree.Parsed parsed) {
    return shown(Objects.requireNonNull(parsed.tree())) + parsed.faults();
  }

  /** A tree with all places, in words that two equal trees share. */
  private static String shown(Tree tree) {
    StringBuilder text = new StringBuilder(tree.place() + " ");
    if (tree instanceof Tree.Mapping mapping) {
      mapping
          .entries()
          .forEach(
              (key, entry) ->
                  text.append(key + "@" + entry.key() + "{" + shown(entry.value()) + "}"));
    } else if (tree instanceof Tree.Sequence sequence) {
      sequence.items().forEach(item -> text.append("[" + shown(item) + "]"));
    } else if (tree instanceof Tree.Scalar scalar) {
      text.append("'" + scalar.text() + "'");
    }
    return text.toString();
  }
}
