package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SpillTest {
  @Test
  void givesBackEveryTextInWhateverOrder() throws IOException {
    Set<String> before = temporaryFiles();
    try (Spill spill = new Spill()) {
      List<Spill.Piece> pieces = new ArrayList<>();
      for (int number = 0; number < 400; number++) {
        pieces.add(spill.add(text(number)));
      }
      for (int number = 399; number >= 0; number--) {
        assertThat(spill.get(pieces.get(number))).isEqualTo(text(number));
      }
      assertThat(pieces.get(399).at()).as("beyond what stays in memory").isGreaterThan(2 << 20);
    }
    assertThat(temporaryFiles()).isEqualTo(before);
  }

  @Test
  void needsNoFileForAFewTexts() throws IOException {
    Set<String> before = temporaryFiles();
    try (Spill spill = new Spill()) {
      Spill.Piece empty = spill.add("");
      Spill.Piece piece = spill.add("Bjørnå");
      assertThat(spill.get(empty)).isEmpty();
      assertThat(spill.get(piece)).isEqualTo("Bjørnå");
      assertThat(temporaryFiles()).isEqualTo(before);
    }
  }

  private static String text(int number) {
    return "å" + number + "🏊".repeat(number * 10);
  }

  private static Set<String> temporaryFiles() throws IOException {
    try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.startsWith("peakproof") && name.endsWith(".part"))
          .collect(Collectors.toSet());
    }
  }
}
