package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Broken versions of the base document: each reads or gives faults, never an exception. The seeds
 * are fixed, so a failure can be repeated.
 */
class FuzzTest {
  private static final List<String> TWISTS =
      List.of(
          ":",
          ": ",
          "- ",
          "{",
          "}",
          "[",
          "]",
          "&a ",
          "*a",
          "!t ",
          "\"",
          "'",
          "|",
          ">",
          "#",
          "\t",
          "\n",
          "\n  ",
          "~",
          "<<: ",
          "---\n",
          ",",
          "@",
          "%",
          "x",
          "(",
          ")",
          "0",
          "9999999999",
          "é",
          "😀",
          "\r",
          "\u0000",
          "\uFEFF",
          "? ",
          "null",
          "yes");

  private final byte[] plan = read("plan.yaml");
  private final byte[] log = read("log.yaml");
  private final byte[] event = read("event.yaml");

  private static byte[] read(String file) {
    try {
      return Files.readAllBytes(Path.of("rules/base", file));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void survivesTwistedPlans() {
    for (int seed = 0; seed < 250; seed++) {
      survives(seed, twisted(plan, new Random(seed)), event, Arrays.copyOf(log, 2_000));
    }
  }

  @Test
  void survivesTwistedEventsAndLogs() {
    byte[] someDays = Arrays.copyOf(log, 4_000);
    for (int seed = 0; seed < 150; seed++) {
      Random random = new Random(seed);
      survives(seed, Arrays.copyOf(plan, 1_300), twisted(event, random), twisted(someDays, random));
    }
  }

  @Test
  void survivesBytesThatAreNoText() {
    for (int seed = 0; seed < 100; seed++) {
      Random random = new Random(seed);
      byte[] bytes = plan.clone();
      for (int i = 0; i <= random.nextInt(4); i++) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      survives(seed, bytes, event, log.length > 9 ? Arrays.copyOf(log, 9) : log);
    }
  }

  @Test
  void survivesDeepAndWideText() {
    for (String piece :
        List.of(
            "[", "{a: ", "- ", "? ", "a:\n ", "(", "'", "&a ", "!x ", "a: b\n", "- a\n", "[],")) {
      survives(0, piece.repeat(20_000).getBytes(StandardCharsets.UTF_8), event, log);
    }
    String line = "plan:\n  weeks:\n    - days: {mon: [swim: '" + "3x(".repeat(5_000) + "']}\n";
    survives(0, line.getBytes(StandardCharsets.UTF_8), event, log);
  }

  private static byte[] twisted(byte[] bytes, Random random) {
    StringBuilder text = new StringBuilder(new String(bytes, StandardCharsets.UTF_8));
    for (int i = 0; i <= random.nextInt(3); i++) {
      int at = random.nextInt(text.length());
      int end = Math.min(text.length(), at + (random.nextBoolean() ? 0 : random.nextInt(30)));
      text.replace(at, end, TWISTS.get(random.nextInt(TWISTS.size())));
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void survives(int seed, byte[] plan, byte[] event, byte[] log) {
    assertThatCode(
            () -> {
              YamlTree.Parsed parsed = YamlTree.read("plan.yaml", plan);
              assertThat(parsed.tree() != null || !parsed.faults().isEmpty()).isTrue();
              if (parsed.tree() != null) {
                Reading reading =
                    Documents.read("plan.yaml", parsed.tree(), tree(event), tree(log), null);
                assertThat(reading.dossier() == null).isEqualTo(!reading.faults().isEmpty());
                reading.faults().forEach(fault -> assertThat(fault.toString()).isNotBlank());
              }
            })
        .as("seed %d", seed)
        .doesNotThrowAnyException();
  }

  private static @Nullable Tree tree(byte[] bytes) {
    return YamlTree.read("other.yaml", bytes).tree();
  }
}
