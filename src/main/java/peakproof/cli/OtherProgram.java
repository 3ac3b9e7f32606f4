package peakproof.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Asks another program something it answers at once. */
final class OtherProgram {
  private static final int SECONDS = 10;

  private OtherProgram() {}

  /** What it says; null when it is not there, fails or does not answer. */
  static @Nullable String answer(Path folder, List<String> command) {
    try {
      Process process =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      process.getOutputStream().close();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        return null;
      }
      return process.exitValue() == 0 ? said.strip() : null;
    } catch (IOException notThere) {
      return null;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return null;
    }
  }
}
