package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Replays docs/import.md from its own blocks. {@code -Dgolden=update} rewrites what it prints. */
class ImportPageTest {
  private static final Path PAGE = Path.of("docs/import.md");
  private static final Pattern BLOCK =
      Pattern.compile("```(?:\\w+ (?<file>[^\n]+))?\n(?<text>.*?)```\n", Pattern.DOTALL);

  @TempDir private Path folder;

  @Test
  void doesWhatItSays() throws IOException {
    String page = Files.readString(PAGE, StandardCharsets.UTF_8);
    StringBuilder replayed = new StringBuilder();
    Matcher block = BLOCK.matcher(page);
    int runs = 0;
    int from = 0;
    while (block.find()) {
      String text = block.group("text");
      replayed.append(page, from, block.start("text"));
      from = block.end("text");
      if (block.group("file") == null && text.startsWith("$ ./peakproof ")) {
        text = replay(text.substring(0, text.indexOf('\n') + 1));
        runs++;
      } else if ("after".equals(block.group("file"))) {
        String log = Files.readString(folder.resolve("log.yaml"), StandardCharsets.UTF_8);
        text = log;
      } else if (block.group("file") != null) {
        Files.writeString(folder.resolve(block.group("file")), text, StandardCharsets.UTF_8);
      }
      replayed.append(text);
    }
    replayed.append(page.substring(from));
    assertThat(runs).isGreaterThan(5);
    if ("update".equals(System.getProperty("golden")) && System.getenv("CI") == null) {
      Files.writeString(PAGE, replayed.toString(), StandardCharsets.UTF_8);
    } else {
      assertThat(replayed.toString()).isEqualTo(page);
    }
  }

  private String replay(String line) {
    String[] arguments =
        Arrays.stream(line.strip().substring("$ ./peakproof ".length()).split(" ", -1))
            .map(
                word ->
                    word.matches("\\w+\\.(?:yaml|csv|gpx)")
                        ? folder.resolve(word).toString()
                        : word)
            .toArray(String[]::new);
    Run run = Run.of(arguments);
    return line + (run.out() + run.err()).replace(folder + "/", "");
  }
}
