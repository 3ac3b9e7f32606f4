package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommitWriterTest {
  @TempDir private Path folder;

  private Path classes() throws IOException {
    return Files.createDirectories(folder.resolve("classes/peakproof/cli")).resolve("commit.txt");
  }

  private String git(Path repository, String... arguments) {
    return OtherProgram.answer(
        repository,
        Stream.concat(
                Stream.of("git", "-c", "user.name=Runa", "-c", "user.email=runa@example.org"),
                Stream.of(arguments))
            .toList());
  }

  private Path repository() throws IOException {
    assumeTrue(git(folder, "--version") != null, "this system has no git");
    Path repository = Files.createDirectory(folder.resolve("repository"));
    Files.writeString(repository.resolve("a"), "a", StandardCharsets.UTF_8);
    for (String step : List.of("init -q", "add a", "commit -q -m a")) {
      assertThat(git(repository, step.split(" "))).as(step).isNotNull();
    }
    return repository.toRealPath();
  }

  @Test
  void writesTheCommitAndWhetherSomethingChangedSince() throws IOException {
    Path repository = repository();
    Path file = classes();
    String commit = git(repository, "rev-parse", "--short=12", "HEAD");
    CommitWriter.main(new String[] {repository.toString(), folder.resolve("classes").toString()});
    assertThat(file).hasContent(commit + "\n");
    Files.writeString(repository.resolve("a"), "b", StandardCharsets.UTF_8);
    CommitWriter.main(new String[] {repository.toString(), folder.resolve("classes").toString()});
    assertThat(file).hasContent(commit + ", changed since\n");
  }

  @Test
  void writesNothingOutsideOfARepositoryOfItsOwn() throws IOException {
    Path file = Files.writeString(classes(), "of another build", StandardCharsets.UTF_8);
    CommitWriter.main(new String[] {folder.toString(), folder.resolve("classes").toString()});
    assertThat(file).doesNotExist();
    Path inside = Files.createDirectory(repository().resolve("unpacked"));
    assertThat(CommitWriter.commit(inside)).isNull();
  }
}
