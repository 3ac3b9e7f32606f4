package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What may lie in a folder of rules, and what is said of the rest. */
class RuleFolderTest {
  private static final long THREE_GIGABYTES = 3L * 1024 * 1024 * 1024;

  @TempDir private Path folder;
  private RuleFiles files;

  @BeforeEach
  void make() {
    files = RuleFiles.in(folder.resolve("rules"));
  }

  @Test
  void missesEachOfTheThreeNeighbours() {
    for (String ending : RuleFiles.sound().keySet()) {
      Map<String, String> texts = RuleFiles.sound();
      texts.remove(ending);
      RuleFiles some = RuleFiles.in(folder.resolve("without" + ending)).with(texts);
      assertThat(some.faults())
          .containsExactly(
              "swim/boat-swims"
                  + ending
                  + ":1:1: the rule 'boat-swims' has no "
                  + ending
                  + " file; three files beside each other: .drl, .yaml, .cases.yaml; write boat-swims"
                  + ending);
    }
  }

  @Test
  void refusesANameThatIsTaken() {
    files.with(RuleFiles.sound());
    RuleFiles own = RuleFiles.in(folder.resolve("own")).with(RuleFiles.sound());
    Ruleset both = files.load(own.root());
    assertThat(own.faults(both))
        .containsExactly(
            "swim/boat-swims.yaml:1:1: there is a rule 'boat-swims' already; a name of its own; the"
                + " other is "
                + files.root()
                + "/swim/boat-swims; rename one of them");
    assertThat(both.cards()).containsOnlyKeys("boat-swims");
  }

  @Test
  void refusesAFormerNameThatAnotherRuleHas() {
    Map<String, String> first = RuleFiles.sound();
    first.merge(".yaml", "was: []", (text, was) -> text.replace(was, "was: [boat-old, boat-two]"));
    Map<String, String> second = RuleFiles.sound();
    second.merge(".yaml", "was: []", (text, was) -> text.replace(was, "was: [boat-old]"));
    files.named("boat-one", first).named("boat-two", second);
    Ruleset both = files.load();
    assertThat(files.faults(both))
        .containsExactly(
            "swim/boat-one.yaml:18:6: 'boat-two' is a name of boat-two already; a former name of"
                + " this rule alone; take it out of one of the two",
            "swim/boat-two.yaml:18:6: 'boat-old' is a name of boat-one already; a former name of"
                + " this rule alone; take it out of one of the two");
    assertThat(both.slug("boat-old")).isEqualTo("boat-one");
    assertThat(both.slug("boat-two")).isEqualTo("boat-two");
  }

  @Test
  void listsAllFaultsOfAllFilesAtOnce() {
    Map<String, String> texts = RuleFiles.sound();
    texts.put(".yaml", texts.get(".yaml").replace("hold: none", "hold: hurt"));
    texts.put(".drl", texts.get(".drl").replace("changeable", "changeabel"));
    texts.put(".cases.yaml", texts.get(".cases.yaml").replace("finds", "find"));
    files.named("boat-one", texts).named("boat-two", texts);
    assertThat(files.faults())
        .extracting(fault -> fault.substring(0, fault.indexOf(": ")))
        .containsExactly(
            "swim/boat-one.cases.yaml:5:5",
            "swim/boat-one.drl:9:19",
            "swim/boat-one.yaml:5:7",
            "swim/boat-two.cases.yaml:5:5",
            "swim/boat-two.drl:9:19",
            "swim/boat-two.yaml:5:7");
  }

  @Test
  void keepsASoundRuleBesideBrokenOnes() {
    Map<String, String> typo = RuleFiles.sound();
    typo.put(".drl", typo.get(".drl").replace("changeable", "changeabel"));
    Map<String, String> syntax = RuleFiles.sound();
    syntax.put(".drl", syntax.get(".drl").replace("then\n", ""));
    Map<String, String> card = RuleFiles.sound();
    card.put(".yaml", "rule: [");
    files.with(RuleFiles.sound());
    files.named("boat-a", typo).named("boat-b", syntax).named("boat-c", card);
    Ruleset loaded = files.load();
    assertThat(loaded.cards()).containsOnlyKeys("boat-swims");
    assertThat(files.faults(loaded))
        .extracting(fault -> fault.substring(0, fault.indexOf(':')))
        .containsExactly("swim/boat-a.drl", "swim/boat-b.drl", "swim/boat-c.yaml");
  }

  @Test
  void takesANameThatIsAWordOfJava() {
    files.named("switch", RuleFiles.sound());
    Ruleset loaded = files.load();
    assertThat(files.faults(loaded)).isEmpty();
    assertThat(loaded.cards()).containsOnlyKeys("switch");
  }

  @Test
  void refusesNamesThatAreNotPlain() {
    for (String name :
        new String[] {"Boat swims", "boat_swims", "1-boat", "measures", "b".repeat(61)}) {
      files.put("swim/" + name + ".yaml", "rule: x");
    }
    files.put("Swim Theme/boat.yaml", "rule: x");
    assertThat(files.faults())
        .hasSize(6)
        .allMatch(
            fault ->
                fault.endsWith(
                    " is no name for a rule or theme; up to 60 small letters, digits and hyphens, a"
                        + " letter first; not 'measures'; swim-open-water-weekly"));
  }

  @Test
  void missesNoRuleThatLiesInTheWrongPlace() {
    files.put("boat.drl", "").put("swim/more/boat.drl", "").put("notes.txt", "").put("a.yaml", "");
    files.put(".git/boat.drl", "").put("swim/.boat.drl.swp", "").put("swim/notes.txt", "");
    assertThat(files.faults())
        .containsExactly(
            "boat.drl:1:1: 'boat.drl' lies in no theme's folder; a folder for each theme, with the"
                + " rules in it; move it to a folder such as swim",
            "swim/more:1:1: 'more' is a folder in a theme's folder; rules lie right below their"
                + " theme; move its rules up, or the folder out");
  }

  @Test
  @Timeout(60)
  void followsNoLink() throws IOException {
    files.with(RuleFiles.sound());
    Path secret = Files.writeString(folder.resolve("secret"), "secret: words of the house\n");
    Path outside = Files.createDirectories(folder.resolve("outside"));
    Files.createSymbolicLink(files.root().resolve("theme"), outside);
    Files.createSymbolicLink(files.root().resolve("swim/boat.yaml"), secret);
    Files.createSymbolicLink(files.root().resolve("swim/boat.drl"), secret);
    Files.createSymbolicLink(files.root().resolve("swim/boat.cases.yaml"), Path.of("nowhere"));
    assertThat(files.faults())
        .hasSize(4)
        .noneMatch(fault -> fault.contains("secret"))
        .allMatch(
            fault ->
                fault.endsWith(
                    "is a link or a device; plain files, so that a folder of rules reaches nothing"
                        + " outside it; copy there what it points to"));
  }

  @Test
  void mayItselfBeALink() throws IOException {
    files.with(RuleFiles.sound());
    Path link = Files.createSymbolicLink(folder.resolve("link"), files.root());
    Ruleset loaded = RuleFolder.load(java.util.List.of(link));
    assertThat(loaded.cards()).containsOnlyKeys("boat-swims");
    assertThat(loaded.isIn("boat-swims", files.root())).isTrue();
    assertThat(loaded.isIn("boat-swims", link.resolve("swim"))).isTrue();
    assertThat(loaded.isIn("boat-swims", folder.resolve("nowhere"))).isFalse();
  }

  @Test
  @Timeout(60)
  void readsNoHugeFileToItsEnd() throws IOException {
    files.with(RuleFiles.sound());
    for (String ending : RuleFiles.sound().keySet()) {
      Path file = files.root().resolve("swim/huge" + ending);
      try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
        huge.setLength(THREE_GIGABYTES);
      }
    }
    assertThat(files.faults())
        .containsExactly(
            "swim/huge.cases.yaml:1:1: this file is larger than 2 MiB; expected one athlete's plan or"
                + " log; split it, or check that it is the right file",
            "swim/huge.drl:1:1: the file has more than 4096 characters; a rule that fits on a"
                + " screen; move the computing into a fact and keep the condition",
            "swim/huge.yaml:1:1: this file is larger than 2 MiB; expected one athlete's plan or log;"
                + " split it, or check that it is the right file");
  }

  @Test
  void saysWhenARuleIsNoUtf8Text() throws IOException {
    files.with(RuleFiles.sound());
    Path file = files.root().resolve("swim/boat-swims.drl");
    Files.write(
        file,
        RuleFiles.sound()
            .get(".drl")
            .replace("can follow", "k\u00f6nnte")
            .getBytes(StandardCharsets.ISO_8859_1));
    assertThat(files.faults())
        .containsExactly(
            "swim/boat-swims.drl:1:49: '\ufffd' has no place in a rule; a text in UTF-8; a rule names"
                + " facts, compares their fields and reports");
  }

  @Test
  void readsNothingThroughACase() {
    Map<String, String> texts = RuleFiles.sound();
    texts.put(
        ".cases.yaml",
        texts
            .get(".cases.yaml")
            .replace(
                "plan/settings/boat-swims: {most: 1, because: the boat is away}",
                "plan/../../secret: x"));
    assertThat(files.with(texts).faults()).isEmpty();
    assertThat(
            files.load().cases().get("boat-swims").get(0).plan().entry("plan").value().entry(".."))
        .isNotNull();
  }
}
