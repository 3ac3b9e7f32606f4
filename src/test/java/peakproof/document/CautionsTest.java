package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class CautionsTest {
  @Test
  void everyConditionHasACautionAndNoOtherHas() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("rules/cautions.yaml"));
    assertThat(
            lines.stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(": ", 2)[0]))
        .containsExactlyInAnyOrderElementsOf(Vocabulary.CONDITIONS.all());
  }
}
