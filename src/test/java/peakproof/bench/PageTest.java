package peakproof.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class PageTest {
  private static final Path PERFORMANCE = Path.of("docs/performance.md");

  @Test
  void keepsTheWordsAroundWhatWasMeasured() throws IOException {
    String page = Files.readString(PERFORMANCE);
    String written = Page.with(page, List.of("First run."));
    assertThat(written)
        .startsWith(page.substring(0, page.indexOf("<!-- measured:")))
        .contains("\n\nFirst run.\n\n")
        .endsWith(page.substring(page.indexOf("<!-- measured: end -->")));
    assertThat(Page.with(written, List.of("Second run.")))
        .isEqualTo(written.replace("First", "Second"));
  }

  @Test
  void refusesAPageWithoutMarks() {
    assertThatIllegalStateException().isThrownBy(() -> Page.with("# How fast\n", List.of()));
  }
}
