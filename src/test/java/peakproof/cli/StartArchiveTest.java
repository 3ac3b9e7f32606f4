package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The archive of classes, made of a program of one class. */
class StartArchiveTest {
  @TempDir private Path folder;

  @Test
  void makesAnArchiveFromWhichJavaStartsTheProgram() throws IOException {
    Path program = program();
    Path archive = folder.resolve("cache/java.jsa");
    assertThat(new StartArchive(folder, program, archive).make()).isNull();
    assertThat(archive).isNotEmptyFile();
    assertThat(archive.getParent()).isDirectoryNotContaining("glob:**/archive*");
    String option = Runtime.version().feature() < 25 ? "SharedArchiveFile" : "AOTCache";
    assertThat(
            OtherProgram.answer(
                folder,
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-XX:+UseSerialGC",
                    "-XX:" + option + "=" + archive,
                    "-jar",
                    program.toString())))
        .isEqualTo("started");
  }

  @Test
  void saysThatJavaMadeNoneOfWhatIsNoProgram() throws IOException {
    Path program = Files.writeString(folder.resolve("no.jar"), "none", StandardCharsets.UTF_8);
    Path archive = folder.resolve("cache/java.jsa");
    assertThat(new StartArchive(folder, program, archive).make()).isEqualTo("Java made no archive");
    assertThat(archive.getParent()).isEmptyDirectory();
  }

  @Test
  void saysWhereItCannotWrite() throws IOException {
    Path file = Files.writeString(folder.resolve("cache"), "a file", StandardCharsets.UTF_8);
    assertThat(new StartArchive(folder, folder, file.resolve("java.jsa")).make())
        .isEqualTo("cannot write in " + file);
  }

  private Path program() throws IOException {
    Path source =
        Files.writeString(
            folder.resolve("Begun.java"),
            "class Begun { public static void main(String[] a) { System.out.print(\"started\"); } }",
            StandardCharsets.UTF_8);
    int compiled =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, "-d", folder.toString(), source.toString());
    assertThat(compiled).isZero();
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, "Begun");
    Path jar = folder.resolve("begun.jar");
    try (OutputStream file = Files.newOutputStream(jar);
        JarOutputStream out = new JarOutputStream(file, manifest)) {
      out.putNextEntry(new JarEntry("Begun.class"));
      out.write(Files.readAllBytes(folder.resolve("Begun.class")));
    }
    return jar;
  }
}
