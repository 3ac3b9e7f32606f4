package peakproof.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The archive of loaded classes from which Java starts this program faster. It is made by two runs
 * of another Java, in a folder of its own, and put in place in one step, so that two at once do no
 * harm and a broken one is never seen.
 */
final class StartArchive {
  private static final long MOST_SECONDS = 120;

  /** From this version on Java keeps more than classes, in one step. */
  private static final int KEEPS_MORE = 25;

  private final Path home;
  private final Path program;
  private final Path archive;

  StartArchive(Path home, Path program, Path archive) {
    this.home = home;
    this.program = program;
    this.archive = archive;
  }

  /** Makes it; null, or what went wrong, in a few words. */
  @Nullable String make() {
    Path folder = archive.toAbsolutePath().getParent();
    if (folder == null) {
      return "no folder for it";
    }
    try {
      Files.createDirectories(folder);
      Path work = Files.createTempDirectory(folder, "archive");
      try {
        return make(work);
      } finally {
        delete(work);
      }
    } catch (IOException e) {
      return "cannot write in " + folder;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return "it was interrupted";
    }
  }

  private @Nullable String make(Path work) throws IOException, InterruptedException {
    Path draft = work.resolve("draft");
    if (Runtime.version().feature() >= KEEPS_MORE) {
      run(work, true, "-XX:AOTCacheOutput=" + draft);
    } else {
      dump(work, draft);
    }
    if (!Files.isRegularFile(draft)) {
      return "Java made no archive";
    }
    Files.move(draft, archive, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    return null;
  }

  /**
   * Some releases of Java 17 end themselves over the lines for proxies of lambdas; then it goes
   * without.
   */
  private void dump(Path work, Path draft) throws IOException, InterruptedException {
    Path list = work.resolve("list");
    run(work, true, "-Xshare:off", "-XX:DumpLoadedClassList=" + list);
    if (!Files.isRegularFile(list)) {
      return;
    }
    run(work, false, "-Xshare:dump", "-XX:SharedClassListFile=" + list, file(draft));
    if (!Files.isRegularFile(draft)) {
      List<String> lines = Files.readAllLines(list, StandardCharsets.UTF_8);
      lines.removeIf(line -> line.startsWith("@lambda-"));
      Files.write(list, lines, StandardCharsets.UTF_8);
      run(work, false, "-Xshare:dump", "-XX:SharedClassListFile=" + list, file(draft));
    }
  }

  private static String file(Path archive) {
    return "-XX:SharedArchiveFile=" + archive;
  }

  /** The run that is copied audits the base plan, as a coach's own runs will audit theirs. */
  private void run(Path work, boolean auditing, String... options)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx512m"));
    command.addAll(List.of(options));
    command.add("-Dpeakproof.home=" + home);
    command.addAll(List.of(auditing ? "-jar" : "-cp", program.toString()));
    if (auditing) {
      command.addAll(List.of("audit", home.resolve("rules/base/plan.yaml").toString()));
    }
    Process java =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(work.resolve("said").toFile())
            .start();
    if (!java.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
      java.destroyForcibly().waitFor();
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
