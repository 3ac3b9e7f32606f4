package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Reads every example of {@code docs/format.md}, and looks for every key and word in it. */
class FormatPageTest {
  private static final Pattern BLOCK = Pattern.compile("(?s)```(\\w+)(?: ([\\w-]+))?\\n(.*?)```");
  private static final Pattern KEY_READ =
      Pattern.compile(
          "\\.(?:read|require|demand|text|yes|mapping|list|words|listedWords|node)\\(\\s*\"([a-z-]+)\"");
  private static final String WEEKS = "  weeks: []\n";
  private static final String DAY =
      Texts.PLAN + "  weeks:\n    - starts: 2027-05-31\n      days:\n        sat:\n          - ";

  private final String page = Files.readString(Path.of("docs/format.md"));

  FormatPageTest() throws IOException {}

  private record Block(String language, String kind, String text) {}

  private List<Block> blocks() {
    return BLOCK
        .matcher(page)
        .results()
        .map(m -> new Block(m.group(1), m.group(2) == null ? "" : m.group(2), m.group(3)))
        .toList();
  }

  @TestFactory
  Stream<DynamicTest> readsEveryExample() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Block block : blocks()) {
      String name = block.kind() + ": " + block.text().lines().findFirst().orElse("");
      if (block.language().equals("yaml") && !block.kind().startsWith("wrong")) {
        tests.add(DynamicTest.dynamicTest(name, () -> assertThat(faults(block)).isEmpty()));
      } else if (!block.kind().isEmpty()
          && block.language().equals("text")
          && !block.kind().equals("faults")) {
        block
            .text()
            .lines()
            .forEach(
                line ->
                    tests.add(
                        DynamicTest.dynamicTest(
                            block.kind() + ": " + line,
                            () -> assertThat(lineFaults(block.kind(), line)).isEmpty())));
      }
    }
    assertThat(tests).hasSizeGreaterThan(30);
    return tests.stream();
  }

  @Test
  void showsFaultsAsTheyAre() {
    Block wrong = only("wrong-session");
    assertThat(Texts.faults(DAY.replace("sat", "mon") + inItem(wrong.text())))
        .containsExactlyElementsOf(only("faults").text().lines().toList());
  }

  private Block only(String kind) {
    List<Block> found = blocks().stream().filter(block -> block.kind().equals(kind)).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static List<String> faults(Block block) {
    String text = block.text();
    String plan = Texts.PLAN + WEEKS;
    return switch (block.kind()) {
      case "plan" -> Texts.faults(text);
      case "event" -> Texts.faults(plan, text, null, null);
      case "log" -> Texts.faults(plan, Texts.EVENT, text, null);
      case "house" -> Texts.faults(plan, Texts.EVENT, null, inThisFolder(text));
      case "athlete" ->
          Texts.faults(
              plan.replace(" {name: Tove Lindqvist}", "\n" + text.indent(4).stripTrailing()));
      case "week" -> Texts.faults(Texts.PLAN + "  weeks:\n    - " + text.indent(6).strip() + "\n");
      case "weeks" -> Texts.faults(Texts.PLAN + "  weeks:\n" + text.indent(4));
      case "session" -> Texts.faults(DAY + inItem(text));
      case "plan-lines" -> Texts.faults(plan + text.indent(2));
      default -> throw new AssertionError("no test for examples of kind '" + block.kind() + "'");
    };
  }

  /** The club of the page has a folder that this one has under another name. */
  private static String inThisFolder(String house) {
    return house.replace("own-rules: [our-rules]", "own-rules: [rules]");
  }

  private static String inItem(String session) {
    return session.indent(12).strip() + "\n";
  }

  private static List<String> lineFaults(String kind, String line) {
    return kind.equals("day")
        ? Texts.faults(
            Texts.PLAN + WEEKS,
            Texts.EVENT,
            "log:\n  format: 1\n  days:\n    2027-05-30: " + line + "\n",
            null)
        : Texts.faults(DAY + kind + ": " + line + "\n");
  }

  @Test
  void namesEveryKey() throws IOException {
    Set<String> keys = new TreeSet<>();
    try (Stream<Path> sources = Files.list(Path.of("src/main/java/peakproof/document"))) {
      for (Path source :
          sources
              .filter(
                  file ->
                      // the table of water temperatures lies beside the rules; no coach writes one
                      (file.toString().endsWith("Reader.java")
                              && !file.endsWith("WaterTableReader.java")
                              // a mapping has a page of its own
                              && !file.endsWith("ColumnMappingReader.java"))
                          || file.endsWith("SessionDetails.java")
                          || file.endsWith("Format.java"))
              .toList()) {
        Matcher read = KEY_READ.matcher(Files.readString(source));
        while (read.find()) {
          keys.add(read.group(1));
        }
      }
    }
    assertThat(keys).hasSizeGreaterThan(100);
    assertThat(keys).allSatisfy(key -> assertThat(page).containsPattern("`(- )?" + key + "[`:]"));
  }

  @Test
  void namesEveryKeyOfAMapping() throws IOException {
    String imports = Files.readString(Path.of("docs/import.md"));
    Path reader = Path.of("src/main/java/peakproof/document/ColumnMappingReader.java");
    Set<String> keys = new TreeSet<>();
    Matcher read = KEY_READ.matcher(Files.readString(reader));
    while (read.find()) {
      keys.add(read.group(1));
    }
    assertThat(keys).hasSizeGreaterThan(5);
    assertThat(keys).allSatisfy(key -> assertThat(imports).contains(key + ":"));
  }

  @Test
  void namesEveryWord() throws IllegalAccessException {
    for (Field field : Vocabulary.class.getDeclaredFields()) {
      if (field.get(null) instanceof Words words) {
        assertThat(words.all())
            .as(field.getName())
            .allSatisfy(word -> assertThat(page).contains("`" + word + "`"));
      }
    }
    String efforts =
        page.lines().filter(line -> line.startsWith("effort = ")).findFirst().orElse("");
    assertThat(efforts.substring(9).split(" \\| "))
        .containsExactlyInAnyOrderElementsOf(
            Stream.of(Effort.values()).map(e -> e.name().toLowerCase(Locale.ROOT)).toList());
  }
}
