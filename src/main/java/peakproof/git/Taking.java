package peakproof.git;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.git.Git.Answer;
import peakproof.git.Snapshot.Outcome;

/** Takes files of a revision out of a repository. */
final class Taking {
  /** Larger files are no documents. */
  private static final long MOST_BYTES = 2 * 1024 * 1024 + 1;

  /** Seconds; only a sick disk or a lost network makes git take longer. */
  private static final long PATIENCE = 120;

  private static final int LONGEST_ERROR = 200;

  private final String program;
  private final Path start;
  private final String revision;

  Taking(String program, Path start, String revision) {
    this.program = program;
    this.start = start;
    this.revision = revision;
  }

  /** A step that did not succeed, in words for the user. */
  private static final class Trouble extends Exception {
    private static final long serialVersionUID = 1;

    Trouble(String why) {
      super(why);
    }
  }

  /** True for names of documents and rules. */
  static boolean wanted(String name) {
    return name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".drl");
  }

  Outcome take() {
    if (!revision.matches("[^-\\s\\p{Cntrl}][^\\s\\p{Cntrl}]*")) {
      return new Outcome.Refused(
          "'" + revision + "' is no revision; expected one such as main, HEAD^1 or a hash");
    }
    Path folder;
    try {
      folder = Files.createTempDirectory("peakproof-").toRealPath();
    } catch (IOException full) {
      return new Outcome.Refused("no room for earlier files (" + kind(full) + ")");
    }
    Snapshot taken = null;
    try {
      taken = take(folder);
      return new Outcome.Taken(taken);
    } catch (Trouble trouble) {
      return new Outcome.Refused(String.valueOf(trouble.getMessage()));
    } catch (IOException full) {
      return new Outcome.Refused("no room for earlier files (" + kind(full) + ")");
    } finally {
      if (taken == null) {
        Snapshot.delete(folder);
      }
    }
  }

  private static String kind(IOException refused) {
    return refused.getClass().getSimpleName();
  }

  private Snapshot take(Path folder) throws IOException, Trouble {
    Path work = Files.createDirectory(folder.resolve("work"));
    Path files = Files.createDirectory(folder.resolve("files"));
    Git git = new Git(program, start, work, PATIENCE);
    Path top = Path.of(line(said(git.ask("rev-parse", "--show-toplevel")))).toRealPath();
    String commit = commit(git);
    Path listing = said(git.ask("ls-tree", "-r", "-l", "-z", "--full-tree", commit));
    List<Blob> blobs =
        Blob.listed(
            Files.readAllBytes(listing), blob -> wanted(blob.path()) && blob.size() <= MOST_BYTES);
    Path names = work.resolve("names");
    Files.writeString(
        names, blobs.stream().map(blob -> blob.name() + "\n").collect(Collectors.joining()));
    try (InputStream in =
        new BufferedInputStream(
            Files.newInputStream(said(git.ask(names, "cat-file", "--batch"))))) {
      for (Blob blob : blobs) {
        write(blob, in, files);
      }
    }
    Snapshot.delete(work);
    return new Snapshot(top, folder, files);
  }

  private String commit(Git git) throws IOException, Trouble {
    Answer answer =
        git.ask("rev-parse", "--verify", "--quiet", "--end-of-options", revision + "^{commit}");
    if (answer instanceof Answer.Failed) {
      boolean shallow = line(said(git.ask("rev-parse", "--is-shallow-repository"))).equals("true");
      throw new Trouble(
          "git knows no revision '"
              + revision
              + "'"
              + (shallow
                  ? "; this clone holds only the newest history: fetch the rest with 'git fetch"
                      + " --unshallow', or set fetch-depth: 0 where the pipeline checks out"
                  : "; 'git branch --all' lists the names it knows"));
    }
    return line(said(answer));
  }

  private Path said(Answer answer) throws Trouble {
    if (answer instanceof Answer.Said said) {
      return said.file();
    }
    if (answer instanceof Answer.Missing) {
      throw new Trouble("earlier versions need the program git, which is not installed");
    }
    if (answer instanceof Answer.Late) {
      throw new Trouble("git did not answer within " + PATIENCE + " seconds");
    }
    String error = ((Answer.Failed) answer).error();
    if (error.contains("not a git repository")) {
      throw new Trouble("'" + start + "' lies in no git repository");
    }
    String first = error.lines().findFirst().orElse("nothing");
    throw new Trouble(
        "git failed in '"
            + start
            + "', saying: "
            + first.substring(0, Math.min(first.length(), LONGEST_ERROR)));
  }

  private static String line(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8).strip();
  }

  private static void write(Blob blob, InputStream in, Path files) throws IOException, Trouble {
    String[] head = head(in).split(" ", -1);
    if (head.length != 3) {
      throw new Trouble("git has not all files of the revision; fetch them first");
    }
    byte[] content = in.readNBytes(Integer.parseInt(head[2]));
    in.skipNBytes(1);
    Path file = inside(files, blob.path());
    Path parent = file == null ? null : file.getParent();
    if (file != null && parent != null) {
      Files.createDirectories(parent);
      Files.write(file, content);
    }
  }

  private static String head(InputStream in) throws IOException {
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    for (int next = in.read(); next >= 0 && next != '\n'; next = in.read()) {
      head.write(next);
    }
    return head.toString(StandardCharsets.US_ASCII);
  }

  /** Null for a name that this system does not take, or that would lead out of the folder. */
  private static @Nullable Path inside(Path files, String name) {
    try {
      Path file = files.resolve(name).normalize();
      return file.startsWith(files) && !file.equals(files) ? file : null;
    } catch (InvalidPathException foreign) {
      return null;
    }
  }
}
