package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputTest {
  @TempDir private Path folder;

  @Test
  void replacesAFileAndLeavesNothingElse() throws IOException {
    Path file = folder.resolve("audit.txt");
    Files.writeString(file, "a longer report of yesterday");
    write(file, "Bjørnå\n");
    assertThat(file).hasContent("Bjørnå\n");
    assertThat(Files.list(folder)).containsExactly(file);
  }

  @Test
  void keepsALinkAndReplacesWhatItPointsTo() throws IOException {
    Path file = Files.writeString(folder.resolve("real.txt"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), file);
    write(link, "new");
    assertThat(link).isSymbolicLink();
    assertThat(file).hasContent("new");
  }

  @Test
  void writesIntoADeviceDirectly() throws IOException {
    write(Path.of("/dev/null"), "gone");
    assertThat(Files.isRegularFile(Path.of("/dev/null"))).isFalse();
  }

  @Test
  void refusesAFolderThatIsNotThere() {
    assertThatThrownBy(() -> write(folder.resolve("no/audit.txt"), "x"))
        .isInstanceOf(IOException.class);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void refusesAFolderInPlaceOfAFile() {
    assertThatThrownBy(() -> write(folder, "x")).isInstanceOf(IOException.class);
  }

  @Test
  void leavesTheFileAloneWhenItIsNotFinished() throws IOException {
    Path file = Files.writeString(folder.resolve("audit.txt"), "of yesterday");
    try (Output output = Output.to(file)) {
      output.writer().write("half of");
    }
    assertThat(file).hasContent("of yesterday");
    assertThat(Files.list(folder)).containsExactly(file);
  }

  private static void write(Path file, String text) throws IOException {
    try (Output output = Output.to(file)) {
      output.writer().write(text);
      output.finish();
    }
  }
}
