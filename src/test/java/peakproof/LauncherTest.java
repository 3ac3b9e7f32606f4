package peakproof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs the real launcher in a folder of its own, with a make-believe Java and Maven. */
class LauncherTest {
  private static final String TOO_OLD = "Java 17 or newer";

  @TempDir private Path folder;
  private final Map<String, String> environment = new TreeMap<>();
  private Path home;
  private Path tools;

  @BeforeEach
  void layOut() throws IOException {
    folder = folder.toRealPath();
    home = Files.createDirectories(folder.resolve("a coach's plans"));
    tools = Files.createDirectories(folder.resolve("tools"));
    Files.copy(Path.of("peakproof"), home.resolve("peakproof"));
    Files.writeString(home.resolve("pom.xml"), "<project/>");
    Files.createDirectories(home.resolve("src/main"));
    for (String tool : List.of("dirname", "readlink", "sed", "find", "stty", "mkdir", "touch")) {
      script(tools.resolve(tool), "exec " + real(tool) + " \"$@\"");
    }
    environment.put("PATH", tools.toString());
  }

  @Test
  void saysWhenJavaIsMissing() {
    assertThat(run("--version"))
        .isEqualTo(
            new Ended(
                5,
                "",
                "peakproof: needs Java 17 or newer; found none on PATH or in JAVA_HOME."
                    + " Install it, or set JAVA_HOME to it.\n"));
  }

  @Test
  void saysWhichJavaIsTooOld() {
    java(tools.resolve("java"), "1.8.0_292");
    Ended ended = run("--version");
    assertThat(ended.code()).isEqualTo(5);
    assertThat(ended.err()).contains(TOO_OLD).contains("found Java 8 at " + tools);
  }

  @Test
  void readsTheVersionFromTheReleaseFile() throws IOException {
    Path old = folder.resolve("jdk-11");
    java(old.resolve("bin/java"), "17.0.1");
    Files.writeString(old.resolve("release"), "IMPLEMENTOR=\"X\"\nJAVA_VERSION=\"11.0.2\"\n");
    environment.put("JAVA_HOME", old.toString());
    assertThat(run("--version").err()).contains("found Java 11 at " + old);
  }

  @Test
  void takesJavaHomeBeforeThePath() {
    jar(Instant.now());
    java(tools.resolve("java"), "17.0.15");
    java(folder.resolve("jdk/bin/java"), "21-ea");
    environment.put("JAVA_HOME", folder.resolve("jdk").toString());
    assertThat(run().out()).startsWith("<21-ea>\n");
  }

  @Test
  void takesThePathWhenJavaHomeIsTooOld() {
    jar(Instant.now());
    java(tools.resolve("java"), "25");
    java(folder.resolve("jdk/bin/java"), "16.0.2");
    environment.put("JAVA_HOME", folder.resolve("jdk").toString());
    assertThat(run().out()).startsWith("<25>\n");
  }

  @Test
  void saysWhenMavenIsMissing() {
    java(tools.resolve("java"), "17");
    Ended ended = run("audit", "plans");
    assertThat(ended.code()).isEqualTo(5);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err()).startsWith("peakproof: is not built yet and needs Maven");
  }

  @Test
  void buildsOnFirstUseAndSaysSo() {
    java(tools.resolve("java"), "17");
    maven("echo built; mkdir -p target; touch target/peakproof.jar");
    Ended ended = run("audit", "plans");
    assertThat(ended.code()).isEqualTo(3);
    assertThat(ended.out()).doesNotContain("built").contains("<audit>\n<plans>\n");
    assertThat(ended.err()).startsWith("peakproof: building, on first use").contains("built");
    assertThat(run("audit", "plans").err()).isEmpty();
  }

  @Test
  void warmsTheProgramOnceItIsBuilt() throws IOException {
    java(tools.resolve("java"), "17");
    maven("mkdir -p target; touch target/peakproof.jar");
    script(
        tools.resolve("java"),
        "[ \"$*\" = -version ] && { echo 'openjdk version \"17\"' >&2; exit; }\n"
            + "echo \"$*\" >> started; exit 103");
    run("audit", "plans");
    assertThat(Files.readAllLines(folder.resolve("started")))
        .satisfiesExactly(
            first -> assertThat(first).endsWith(" warm"),
            second -> assertThat(second).endsWith(" audit plans"));
  }

  @Test
  void saysWhenTheBuildFails() {
    java(tools.resolve("java"), "17");
    maven("echo no compiler; exit 1");
    Ended ended = run("audit", "plans");
    assertThat(ended.code()).isEqualTo(5);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err()).contains("no compiler\n").contains("peakproof: the build failed;");
  }

  @Test
  void buildsAgainWhenASourceIsNewerThanTheProgram() throws IOException {
    java(tools.resolve("java"), "17");
    maven("touch target/peakproof.jar");
    jar(Instant.now().minusSeconds(60));
    Files.writeString(home.resolve("src/main/Main.java"), "class Main {}");
    assertThat(run("--version").err()).contains("building");
    assertThat(run("--version").err()).isEmpty();
  }

  @Test
  void needsNoMavenWhereOnlyTheProgramIs() throws IOException {
    java(tools.resolve("java"), "17");
    jar(Instant.EPOCH);
    Files.delete(home.resolve("pom.xml"));
    assertThat(run("--version").code()).isEqualTo(3);
  }

  @Test
  void passesArgumentsAndExitCodeOn() {
    java(tools.resolve("java"), "17");
    jar(Instant.now());
    Ended ended = run("audit", "my plans", "", "*", "--as-of=2027-05-30");
    assertThat(ended.code()).isEqualTo(3);
    assertThat(ended.out())
        .contains(
            "<-Dpeakproof.home="
                + home
                + ">\n<-Dpeakproof.exit=100>\n<-Dpeakproof.terminal=false>\n<-Dpeakproof.watched=false>\n<-Dpeakproof.answering=false>\n<-jar>\n")
        .endsWith("<audit>\n<my plans>\n<>\n<*>\n<--as-of=2027-05-30>\n");
  }

  @Test
  void takesNoCodeOfJavaForOneOfTheProgram() {
    jar(Instant.now());
    java(tools.resolve("java"), "17", 1);
    Ended failed = run("audit", "plans");
    assertThat(failed.code()).isEqualTo(5);
    assertThat(failed.err()).startsWith("peakproof: Java ended by itself with code 1, ");
    java(tools.resolve("java"), "17", 3);
    assertThat(run("audit", "plans").code()).isEqualTo(5);
    java(tools.resolve("java"), "17", 100);
    assertThat(run("audit", "plans")).extracting(Ended::code, Ended::err).containsExactly(0, "");
    java(tools.resolve("java"), "17", 143);
    assertThat(run("audit", "plans")).extracting(Ended::code, Ended::err).containsExactly(143, "");
  }

  @Test
  void startsFromAnArchiveWhenThereIsOne() throws IOException {
    jar(Instant.now());
    java(tools.resolve("java"), "17.0.15");
    assertThat(run().out()).doesNotContain("Archive");
    Path beside = home.resolve("target/peakproof-java-unknown.jsa");
    Files.writeString(beside, "");
    assertThat(run().out()).contains("<-XX:SharedArchiveFile=" + beside + ">\n");
    java(tools.resolve("java"), "25.0.1");
    assertThat(run().out()).doesNotContain("Archive");
    Path kept = Files.createDirectories(folder.resolve("cache/peakproof"));
    Path cached = kept.resolve("peakproof-java-unknown.aot");
    Files.writeString(cached, "");
    environment.put("XDG_CACHE_HOME", folder.resolve("cache").toString());
    assertThat(run().out()).contains("<-XX:AOTCache=" + cached + ">\n");
  }

  @Test
  void startsWithoutAnArchiveThatBringsJavaDown() throws IOException {
    jar(Instant.now());
    script(
        tools.resolve("java"),
        "[ \"$*\" = -version ] && { echo 'openjdk version \"17\"' >&2; exit; }\n"
            + "case $* in *Archive*) echo '# A fatal error' >&2; exit 134 ;; esac\n"
            + "echo report; exit 101");
    Files.writeString(home.resolve("target/peakproof-java-unknown.jsa"), "");
    assertThat(run("audit", "plans")).isEqualTo(new Ended(1, "report\n", "# A fatal error\n"));
  }

  @Test
  void givesAFolderOfPlansAllCores() throws IOException {
    jar(Instant.now());
    java(tools.resolve("java"), "17");
    Files.createDirectories(folder.resolve("my plans"));
    Files.createDirectories(folder.resolve("our rules"));
    assertThat(run("audit", "my plans").out()).contains("<-XX:+UseParallelGC>");
    assertThat(run("audit", "plan.yaml", "--rules", "our rules").out())
        .contains("<-XX:+UseSerialGC>");
    assertThat(run("rules", "try", "our rules").out()).contains("<-XX:+UseSerialGC>");
  }

  @Test
  void worksThroughLinks() throws IOException {
    java(tools.resolve("java"), "17");
    jar(Instant.now());
    Path near = Files.createSymbolicLink(home.resolve("pp"), Path.of("peakproof"));
    Path far = Files.createDirectories(folder.resolve("bin")).resolve("peakproof");
    Files.createSymbolicLink(far, Path.of("../" + home.getFileName() + "/pp"));
    for (Path link : List.of(near, far)) {
      assertThat(start(link, "--version").out()).contains("<-Dpeakproof.home=" + home + ">");
    }
  }

  @Test
  void letsJavaReadFileNamesInUtf8() {
    java(tools.resolve("java"), "17");
    jar(Instant.now());
    environment.put("LANG", "C");
    assertThat(run().out()).contains("locale C.UTF-8\n");
    environment.put("LANG", "nb_NO.utf8");
    assertThat(run().out()).contains("locale \n");
  }

  private Ended run(String... arguments) {
    return start(home.resolve("peakproof"), arguments);
  }

  /** Runs the script from another folder; a run ends by itself well within a minute. */
  private Ended start(Path script, String... arguments) {
    List<String> command = new ArrayList<>(List.of("/bin/sh", script.toString()));
    command.addAll(List.of(arguments));
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    ProcessBuilder process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    process.environment().clear();
    process.environment().putAll(environment);
    try {
      Process started = process.start();
      assertThat(started.waitFor(1, TimeUnit.MINUTES)).isTrue();
      return new Ended(
          started.exitValue(),
          Files.readString(out, StandardCharsets.UTF_8),
          Files.readString(err, StandardCharsets.UTF_8));
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  private record Ended(int code, String out, String err) {}

  /** A Java that tells its version, its locale and its arguments, and exits with our code 3. */
  private static void java(Path path, String version) {
    java(path, version, 103);
  }

  private static void java(Path path, String version, int ends) {
    script(
        path,
        """
        if [ "$*" = -version ]; then echo 'openjdk version "VERSION" 2027-01-01' >&2; exit; fi
        echo '<VERSION>'
        echo "locale ${LC_ALL:-}"
        for argument in "$@"; do echo "<$argument>"; done
        exit ENDS
        """
            .replace("VERSION", version)
            .replace("ENDS", String.valueOf(ends)));
  }

  private void maven(String does) {
    script(tools.resolve("mvn"), does);
  }

  private void jar(Instant built) {
    try {
      Path jar = Files.createDirectories(home.resolve("target")).resolve("peakproof.jar");
      Files.writeString(jar, "");
      Files.setLastModifiedTime(jar, FileTime.from(built.plusSeconds(1)));
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
  }

  private static void script(Path path, String does) {
    try {
      Files.createDirectories(path.getParent());
      Files.writeString(path, "#!/bin/sh\n" + does + "\n");
      Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rwxr-xr-x"));
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
  }

  private static Path real(String tool) {
    return Stream.of("/usr/bin", "/bin")
        .map(bin -> Path.of(bin, tool))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("this machine has no " + tool));
  }
}
