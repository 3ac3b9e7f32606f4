package peakproof.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A process to be timed, with what it changes in the environment. */
record Command(List<String> words, Map<String, String> environment) {
  /** What an audit that ran to its end exits with: nothing to hold, or something. */
  private static final List<Integer> DONE = List.of(0, 1);

  /**
   * Often enough to miss next to nothing of a run of seconds, and seldom enough to cost nothing.
   */
  private static final int MILLISECONDS_BETWEEN_LOOKS = 50;

  static Command of(List<String> words) {
    return new Command(words, Map.of());
  }

  /** Seconds from start to end. */
  double seconds() {
    return run(false).seconds();
  }

  /**
   * One run.
   *
   * @param peakMegabytes most memory that one of its processes held at a time, as Linux counts it
   *     ({@code VmHWM}, looked up every 50 ms); 0 when nobody looked
   */
  record Ran(double seconds, double peakMegabytes) {}

  Ran run(boolean lookAtMemory) {
    ProcessBuilder builder =
        new ProcessBuilder(words)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD);
    builder.environment().putAll(environment);
    long peak = 0;
    try {
      long began = System.nanoTime();
      Process process = builder.start();
      while (lookAtMemory && !process.waitFor(MILLISECONDS_BETWEEN_LOOKS, TimeUnit.MILLISECONDS)) {
        peak = Math.max(peak, peakKib(process));
      }
      int code = process.waitFor();
      double seconds = (System.nanoTime() - began) / 1e9;
      if (!DONE.contains(code)) {
        throw new IllegalStateException(code + " is what this exits with: " + words);
      }
      return new Ran(seconds, peak * 1024 / 1e6);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** The launcher is a shell, and Java its child. */
  private static long peakKib(Process process) {
    return Stream.concat(Stream.of(process.toHandle()), process.descendants())
        .mapToLong(each -> peakKib(Path.of("/proc", String.valueOf(each.pid()), "status")))
        .max()
        .orElse(0);
  }

  private static long peakKib(Path status) {
    try (Stream<String> lines = Files.lines(status)) {
      return lines
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
          .findFirst()
          .orElse(0);
    } catch (IOException | UncheckedIOException gone) {
      return 0;
    }
  }
}
