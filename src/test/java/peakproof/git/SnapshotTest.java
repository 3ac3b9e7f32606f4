package peakproof.git;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.Repository;
import peakproof.git.Snapshot.Outcome;

class SnapshotTest {
  @TempDir private Path folder;
  private Repository repository;

  @BeforeEach
  void begin() throws IOException {
    repository = Repository.in(Files.createDirectory(folder.resolve("club")));
  }

  @Test
  void takesFilesWithOddNamesAsTheyWere() throws IOException {
    List<String> names =
        List.of("a b/plan.yaml", "Åse \"1\"/plan.yaml", "-x.yaml", "new\nline.yml", "$(id).drl");
    for (String name : names) {
      repository.write(name, "was: " + name);
    }
    repository.write("picture.png", "no document");
    repository.commit("odd");
    repository.edit("-x.yaml", text -> "other");
    Files.delete(repository.file("new\nline.yml"));
    repository.write("later.yaml", "not in git");
    Path kept;
    try (Snapshot snapshot = taken("HEAD")) {
      kept = snapshot.files();
      for (String name : names) {
        assertThat(snapshot.earlier(repository.file(name))).hasContent("was: " + name);
      }
      assertThat(snapshot.earlier(repository.file("picture.png"))).doesNotExist();
      assertThat(snapshot.now(kept.resolve("-x.yaml"))).hasContent("other");
      assertThat(names.stream().filter(name -> snapshot.changed(repository.file(name))))
          .containsExactly("-x.yaml", "new\nline.yml");
      assertThat(snapshot.changed(repository.file("later.yaml"))).isTrue();
      assertThat(snapshot.changed(repository.file("a b"))).isFalse();
      assertThat(snapshot.changed(repository.folder())).isTrue();
      assertThat(snapshot.earlier(folder)).isNull();
      assertThat(snapshot.changed(folder.resolve("outside.yaml"))).isFalse();
    }
    assertThat(kept).doesNotExist();
  }

  @Test
  void takesNoNoticeOfLineEnds() throws IOException {
    repository.write("plan.yaml", "a\nb\n");
    repository.commit("lines");
    repository.edit("plan.yaml", text -> text.replace("\n", "\r\n"));
    try (Snapshot snapshot = taken("main")) {
      assertThat(snapshot.changed(repository.file("plan.yaml"))).isFalse();
    }
  }

  @Test
  void followsNoLinkOutOfTheRevision() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.yaml"), "secret");
    Files.createSymbolicLink(repository.file("plan.yaml"), secret);
    repository.write("other.yaml", "x");
    repository.commit("link");
    try (Snapshot snapshot = taken("HEAD")) {
      assertThat(snapshot.files().resolve("plan.yaml")).doesNotExist();
    }
  }

  @Test
  void saysWhatIsWrongWithARevision() throws IOException {
    repository.write("plan.yaml", "x");
    repository.commit("one");
    assertThat(refusal(repository.folder(), "nosuch"))
        .isEqualTo("git knows no revision 'nosuch'; 'git branch --all' lists the names it knows");
    Path leak = folder.resolve("leak");
    for (String wrong : List.of("--output=" + leak, "", "a b", "main\nHEAD", "-1")) {
      assertThat(refusal(repository.folder(), wrong)).contains("is no revision");
    }
    assertThat(refusal(repository.folder(), "HEAD:plan.yaml")).contains("git knows no revision");
    assertThat(leak).doesNotExist();
  }

  @Test
  void saysWhatHelpsInAShallowClone() throws IOException {
    for (String text : List.of("one", "two")) {
      repository.write("plan.yaml", text);
      repository.commit(text);
    }
    Path clone = folder.resolve("clone");
    repository.git(
        "clone", "-q", "--depth", "1", repository.folder().toUri().toString(), clone.toString());
    assertThat(refusal(clone, "HEAD^1")).contains("git fetch --unshallow", "fetch-depth: 0");
    try (Snapshot snapshot = taken("HEAD")) {
      assertThat(snapshot.files().resolve("plan.yaml")).hasContent("two");
    }
  }

  @Test
  void saysWhenThereIsNoRepositoryOrNoGit() throws IOException {
    Path bare = Files.createDirectory(folder.resolve("bare"));
    assertThat(refusal(bare, "main")).isEqualTo("'" + bare + "' lies in no git repository");
    assertThat(new Taking("no-such-program", bare, "main").take())
        .isEqualTo(
            new Outcome.Refused("earlier versions need the program git, which is not installed"));
  }

  private Snapshot taken(String revision) {
    return ((Outcome.Taken) Snapshot.take(repository.folder(), revision)).snapshot();
  }

  private static String refusal(Path folder, String revision) {
    return ((Outcome.Refused) Snapshot.take(folder, revision)).why();
  }
}
