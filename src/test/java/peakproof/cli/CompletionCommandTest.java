package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompletionCommandTest {
  @TempDir private Path folder;

  @Test
  void printsOneScriptForBothShells() {
    Run bash = Run.of("completion", "bash");
    assertThat(bash.code()).isZero();
    assertThat(bash.err()).isEmpty();
    assertThat(bash.out()).isEqualTo(Run.of("completion", "zsh").out()).contains("ZSH_VERSION");
    assertThat(Run.of("completion", "fish").code()).isEqualTo(2);
    assertThat(Run.of("completion").code()).isEqualTo(2);
  }

  @Test
  void completesCommandsAndOptionsInABash() throws IOException {
    assumeTrue(said("echo here") != null, "this system has no bash");
    Path script = folder.resolve("completion");
    Files.writeString(script, Run.of("completion", "bash").out(), StandardCharsets.UTF_8);
    assertThat(OtherProgram.answer(folder, List.of("bash", "-n", script.toString()))).isEmpty();
    assertThat(completed(script, "aud")).isEqualTo("audit");
    assertThat(completed(script, "audit", "--fail-a")).isEqualTo("--fail-at");
    assertThat(completed(script, "rules", "exp")).isEqualTo("export");
    assertThat(completed(script, "completion", "--out")).isEqualTo("--output");
  }

  private String completed(Path script, String... words) {
    String line = "peakproof " + String.join(" ", words);
    return said(
        "source '"
            + script
            + "' && COMP_WORDS=("
            + line
            + ") && COMP_CWORD="
            + words.length
            + " && COMP_LINE='"
            + line
            + "' && COMP_POINT="
            + line.length()
            + " && _complete_peakproof && echo ${COMPREPLY[@]}");
  }

  private String said(String command) {
    return OtherProgram.answer(folder, List.of("bash", "-c", command));
  }
}
