package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageOfOnePlanTest {
  @Test
  void isRefusedForSeveral() {
    Run run = Run.of("audit", "plans", "--format", "html");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("'--format html' is one page of one plan, and 8 were found")
        .contains("peakproof roster plans --output DIR");
  }

  @Test
  void isWrittenForAFolderThatHoldsOne(@TempDir Path folder) throws IOException {
    Path page = folder.resolve("page.html");
    Run run = Run.of("audit", "plans/tove", "--format", "html", "--output", page.toString());
    assertThat(run.code()).isEqualTo(Run.of("audit", "plans/tove").code());
    assertThat(Files.readString(page)).startsWith("<!doctype html>").endsWith("</html>\n");
  }
}
