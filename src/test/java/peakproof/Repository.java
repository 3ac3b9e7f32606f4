package peakproof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** A git repository in a temporary folder, with a club's plans in it. */
public record Repository(Path folder) {
  /** An empty one. */
  public static Repository in(Path folder) {
    Repository repository = new Repository(folder);
    repository.git("init", "--quiet", "--initial-branch=main");
    return repository;
  }

  /** One with house, events and the plans of these athletes from the demo folder, committed. */
  public static Repository of(Path folder, String... athletes) throws IOException {
    Repository repository = in(folder);
    List<String> files = new ArrayList<>(List.of("house.yaml", "events/merrow.yaml"));
    files.add("events/saltmarsh.yaml");
    for (String athlete : athletes) {
      files.addAll(List.of(athlete + "/plan.yaml", athlete + "/log.yaml"));
    }
    for (String file : files) {
      repository.write("plans/" + file, Files.readString(Path.of("plans").resolve(file)));
    }
    repository.commit("the plans of the club");
    return repository;
  }

  public Path file(String name) {
    return folder.resolve(name);
  }

  public void write(String name, String text) throws IOException {
    Files.createDirectories(file(name).getParent());
    Files.writeString(file(name), text);
  }

  public void edit(String name, UnaryOperator<String> change) throws IOException {
    String before = Files.readString(file(name));
    String after = change.apply(before);
    assertThat(after).isNotEqualTo(before);
    Files.writeString(file(name), after);
  }

  public void commit(String message) {
    git("add", "--all");
    git("-c", "user.name=MK", "-c", "user.email=mk@club.invalid", "commit", "-qm", message);
  }

  /** Runs git in it and gives what it said. */
  public String git(String... arguments) {
    List<String> command = new ArrayList<>(List.of("git"));
    command.addAll(List.of(arguments));
    ProcessBuilder builder =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
    builder.environment().keySet().removeIf(name -> name.startsWith("GIT_"));
    builder.environment().put("GIT_CONFIG_GLOBAL", folder.resolve(".none").toString());
    try {
      Process process = builder.start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(process.waitFor()).as(said).isZero();
      return said.strip();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }
}
