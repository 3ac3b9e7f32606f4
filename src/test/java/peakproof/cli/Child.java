package peakproof.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import peakproof.rule.TestClassPath;

/** A run of the program in a process of its own. */
record Child(int code, String out, String err) {
  /**
   * Runs it.
   *
   * @param said where what it says is kept meanwhile
   * @param here the folder it runs in
   * @param environment what is set besides
   */
  static Child run(Path said, Path here, Map<String, String> environment, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.add("-Dpeakproof.home=" + Path.of("").toAbsolutePath());
    command.addAll(List.of("-cp", TestClassPath.text(), "peakproof.Main"));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).directory(here.toFile());
    builder.environment().putAll(environment);
    Path out = said.resolve("out");
    Path err = said.resolve("err");
    int code = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start().waitFor();
    return new Child(
        code,
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }
}
