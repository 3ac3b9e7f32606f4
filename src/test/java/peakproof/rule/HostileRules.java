package peakproof.rule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The corpus of rules that try to do what a rule may not, each with a sound card. */
public final class HostileRules {
  private static final String FAULTS = "faults.txt";
  private static final String CARD =
      """
      rule: %s
      title: A week that is known
      severity: NOTE
      steps: []
      hold: none
      grade: common-practice
      sources: []
      applies: {}
      needs: []
      judges-absence: no
      default: on
      settings: {}
      why: "This is {week.label}."
      do: Look at it.
      care: none
      not-for: none
      was: []
      """;
  private static final String CASES =
      """
      wrong: []
      fine:
        - case: the plan as it is
      """;

  private HostileRules() {}

  /** The rules' texts by name, {@code CANARY} replaced by a folder in which nothing may appear. */
  public static Map<String, String> texts(Path canary) {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder())) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(".drl")) {
          texts.put(
              name.replace(".drl", ""),
              Files.readString(file, StandardCharsets.UTF_8)
                  .replace("CANARY", canary.toString().replace('\\', '/')));
        }
      }
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
    return texts;
  }

  /** What is said of each, by name: at which text, and the words. */
  static Map<String, List<String>> faults() {
    Map<String, List<String>> faults = new TreeMap<>();
    String name = "";
    for (String line : FaultTable.text("/hostile/" + FAULTS).lines().toList()) {
      if (line.startsWith("== ")) {
        name = line.substring(3);
        faults.put(name, new java.util.ArrayList<>());
      } else if (line.startsWith("> ")) {
        Objects.requireNonNull(faults.get(name)).add(line.substring(2));
      }
    }
    return faults;
  }

  /** Writes the corpus into a theme of a folder of rules. */
  public static void write(RuleFiles files, Path canary) {
    texts(canary)
        .forEach(
            (name, text) ->
                files
                    .put("hostile/" + name + ".drl", text)
                    .put("hostile/" + name + ".yaml", String.format(CARD, name))
                    .put("hostile/" + name + ".cases.yaml", CASES));
  }

  private static Path folder() {
    try {
      return Path.of(
              Objects.requireNonNull(HostileRules.class.getResource("/hostile/" + FAULTS)).toURI())
          .getParent();
    } catch (URISyntaxException unexpected) {
      throw new IllegalStateException(unexpected);
    }
  }
}
