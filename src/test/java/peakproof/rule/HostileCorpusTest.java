package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import peakproof.document.Fault;

/** Rules that try to run something of their own: each is refused, and nothing of it runs. */
class HostileCorpusTest {
  private static final int WRONG_RULE = 4;

  @TempDir private Path folder;

  @Test
  @Timeout(60)
  void refusesEveryOneWithAClearMessage() {
    Ruleset ruleset = loaded(folder.resolve("canary"));
    Map<String, List<String>> expected = HostileRules.faults();
    assertThat(ruleset.cards()).isEmpty();
    assertThat(expected).hasSizeGreaterThan(120);
    assertThat(expected.keySet()).isEqualTo(ruleset.origin().keySet());
    expected.forEach(
        (name, faults) -> {
          List<Fault> told = of(name, ruleset);
          assertThat(told).as(name).isNotEmpty();
          for (String fault : faults) {
            assertThat(told)
                .as(name)
                .anyMatch(one -> one.toString().matches(".*\\.drl:" + pattern(fault) + "; .*"));
          }
        });
  }

  @Test
  @Timeout(60)
  void runsNothingOfThem() {
    Path canary = folder.resolve("canary");
    loaded(canary);
    assertThat(canary).doesNotExist();
    assertThat(System.getProperty(Sprung.TRACE)).isNull();
  }

  @Test
  @Timeout(120)
  void leavesTheProgramToItsEnd() throws IOException, InterruptedException {
    Path canary = Files.createDirectory(folder.resolve("canary"));
    Path work = Files.createDirectory(folder.resolve("work"));
    HostileRules.write(RuleFiles.in(folder.resolve("home/rules")), canary);
    Path said = folder.resolve("said");
    Process run =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-Dpeakproof.home=" + folder.resolve("home"),
                "-cp",
                TestClassPath.text(),
                "peakproof.Main",
                "rules",
                "check")
            .directory(work.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertThat(run.waitFor(100, TimeUnit.SECONDS)).isTrue();
    String text = Files.readString(said, StandardCharsets.UTF_8);
    assertThat(run.exitValue()).as(text).isEqualTo(WRONG_RULE);
    assertThat(text).doesNotContain("internal error").doesNotContain("\tat ");
    HostileRules.faults()
        .keySet()
        .forEach(name -> assertThat(text).contains("/hostile/" + name + ".drl:"));
    assertThat(canary).isEmptyDirectory();
    assertThat(work).isEmptyDirectory();
  }

  /** Without any vetting the engine does run what a rule's name says: the canary can see it. */
  @Test
  void theEngineAloneWouldRunThem() throws Exception {
    Engine.Built built = unvetted("name-runs");
    ClassLoader anything =
        new ClassLoader(getClass().getClassLoader()) {
          @Override
          protected Class<?> findClass(String name) {
            byte[] bytes = Objects.requireNonNull(built.classes().get(name), name);
            return defineClass(name, bytes, 0, bytes.length);
          }
        };
    Class.forName(built.models().get(0), true, anything).getDeclaredConstructor().newInstance();
    assertThat(System.clearProperty(Sprung.TRACE)).isEqualTo("yes");
  }

  @Test
  void theirClassesAloneWouldBeRefused() throws Engine.Unreadable {
    VettedClasses vetted = new VettedClasses(() -> AllowedMembers.of(FactTypes.shipped()));
    assertThat(vetted.add("name-runs", unvetted("name-runs"), false)).contains("make a new Sprung");
    assertThat(vetted.add("print", unvetted("print"), false))
        .contains("read System.out", "call PrintStream.println");
    assertThat(vetted.add("argument-runs", unvetted("other-reports"), false)).isEmpty();
    assertThat(vetted.classes()).isEmpty();
  }

  private Engine.Built unvetted(String name) throws Engine.Unreadable {
    String text = Objects.requireNonNull(HostileRules.texts(folder).get(name));
    return Objects.requireNonNull(Engine.build(Map.of(name, Engine.parse(text)), List.of()), name);
  }

  private Ruleset loaded(Path canary) {
    RuleFiles files = RuleFiles.in(folder.resolve("rules"));
    HostileRules.write(files, canary);
    return files.load();
  }

  /** A low line stands for a column that the length of the canary's path moves. */
  private static String pattern(String fault) {
    return Pattern.quote(fault).replace(":_:", ":\\E[0-9]+\\Q:");
  }

  private static List<Fault> of(String name, Ruleset ruleset) {
    return ruleset.faults().stream()
        .filter(fault -> fault.place().file().endsWith("/hostile/" + name + ".drl"))
        .toList();
  }
}
