package peakproof.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Runs of the program with a few of the shipped rules, which are compiled once: for quick tests.
 */
record FewRules(Path home) {
  private static final List<String> NAMES =
      List.of(
          "brick-none",
          "run-pain-rule",
          "strength-none",
          "swim-bilateral",
          "swim-open-water-none",
          "swim-wetsuit-rehearsal",
          "taper-missing",
          "measures",
          "water-temperature",
          "cautions");

  static FewRules in(Path home) throws IOException {
    Path shipped = Path.of("rules");
    try (Stream<Path> all = Files.walk(shipped)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String name = file.getFileName().toString();
        boolean base = file.getParent().endsWith("base");
        if (base || NAMES.contains(name.substring(0, name.indexOf('.')))) {
          Path copy = home.resolve("rules").resolve(shipped.relativize(file));
          Files.createDirectories(copy.getParent());
          Files.copy(file, copy);
        }
      }
    }
    Files.writeString(home.resolve("rules/presets.yaml"), "{}\n");
    return new FewRules(home);
  }

  Run run(String... arguments) {
    Map<String, String> environment = Map.of("XDG_CACHE_HOME", home.toString());
    return Run.in(new Surroundings(home, Run.CLOCK, false, false, environment), arguments);
  }
}
