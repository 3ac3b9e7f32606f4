package peakproof.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What the numbers were measured on, as Linux tells it. */
final class Machine {
  private Machine() {}

  static String inWords(List<Java> javas) throws IOException {
    double kib = Double.parseDouble(first("/proc/meminfo", "MemTotal:").replaceAll("\\D", ""));
    return String.format(
        Locale.ROOT,
        "%d cores (%s), %.0f GiB of memory, %s, Java %s",
        Runtime.getRuntime().availableProcessors(),
        first("/proc/cpuinfo", "model name").replaceFirst("^\\s*:\\s*", ""),
        kib / (1 << 20),
        first("/etc/os-release", "PRETTY_NAME=").replace("\"", ""),
        String.join(" and ", javas.stream().map(Java::version).toList()));
  }

  /** What stands behind the first mention of something in one of the system's files. */
  private static String first(String file, String key) throws IOException {
    try (Stream<String> lines = Files.lines(Path.of(file))) {
      return lines
          .filter(line -> line.startsWith(key))
          .map(line -> line.substring(key.length()).strip())
          .findFirst()
          .orElse("unknown");
    }
  }
}
