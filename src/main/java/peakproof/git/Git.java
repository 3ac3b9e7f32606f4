package peakproof.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Runs git in a folder: without a shell, without asking anybody, without changing anything, and not
 * for ever. Its input and output are files, so that neither side waits for the other.
 */
final class Git {
  private final String program;
  private final Path folder;
  private final Path work;
  private final long patience;

  /**
   * @param work a folder for its output
   * @param patience seconds that one call may take
   */
  Git(String program, Path folder, Path work, long patience) {
    this.program = program;
    this.folder = folder;
    this.work = work;
    this.patience = patience;
  }

  /** What came of a call. */
  sealed interface Answer {
    /** It went well; what it wrote lies in a file. */
    record Said(Path file) implements Answer {}

    /** It ended with a code of its own. */
    record Failed(String error) implements Answer {}

    /** There is no program git that could be started. */
    record Missing() implements Answer {}

    /** It did not end in time. */
    record Late() implements Answer {}
  }

  /** Calls git with these arguments. */
  Answer ask(String... arguments) {
    return ask(null, arguments);
  }

  /**
   * Calls git with these arguments.
   *
   * @param input what it reads; null for nothing
   */
  Answer ask(@Nullable Path input, String... arguments) {
    try {
      return call(input, arguments);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return new Answer.Late();
    } catch (IOException disk) {
      return new Answer.Failed("no room for its answer");
    }
  }

  private Answer call(@Nullable Path input, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.addAll(List.of(program, "--no-pager", "-c", "core.fsmonitor=false"));
    command.addAll(List.of(arguments));
    Path out = Files.createTempFile(work, "out", null);
    Path err = Files.createTempFile(work, "err", null);
    Path nothing = input == null ? Files.createTempFile(work, "in", null) : input;
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectInput(nothing.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    tidy(builder.environment());
    Process process;
    try {
      process = builder.start();
    } catch (IOException absent) {
      return new Answer.Missing();
    }
    try {
      if (!process.waitFor(patience, TimeUnit.SECONDS)) {
        return new Answer.Late();
      }
    } finally {
      process.destroyForcibly();
    }
    return process.exitValue() == 0
        ? new Answer.Said(out)
        : new Answer.Failed(Files.readString(err, StandardCharsets.ISO_8859_1));
  }

  /**
   * A hook of git runs with variables that point to another index or repository than the folder's;
   * configuration given by variables stays, since a pipeline may have to trust a folder that way.
   */
  private static void tidy(Map<String, String> environment) {
    environment
        .keySet()
        .removeIf(
            name -> {
              String upper = name.toUpperCase(Locale.ROOT);
              return upper.startsWith("GIT_") && !upper.startsWith("GIT_CONFIG");
            });
    environment.put("GIT_TERMINAL_PROMPT", "0");
    environment.put("GIT_OPTIONAL_LOCKS", "0");
    environment.put("LC_ALL", "C");
  }
}
