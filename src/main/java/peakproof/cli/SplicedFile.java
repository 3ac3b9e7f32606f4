package peakproof.cli;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.document.Splice;
import peakproof.document.Tree;
import peakproof.document.YamlTree;
import peakproof.document.YamlValue;

/** A document that is added to: written whole or not at all, and only when it reads well again. */
final class SplicedFile {
  private static final int MOST_BYTES = 2 * 1024 * 1024 + 1;

  private final Path file;
  private final @Nullable Splice splice;
  private final List<Fault> faults;

  private SplicedFile(Path file, @Nullable Splice splice, List<Fault> faults) {
    this.file = file;
    this.splice = splice;
    this.faults = faults;
  }

  /** Opens a file; one that does not exist is one to begin. */
  static SplicedFile open(Path file) {
    if (!Files.exists(file)) {
      return new SplicedFile(file, null, List.of());
    }
    try (InputStream in = Files.newInputStream(file)) {
      Splice.Opened opened = Splice.of(name(file), in.readNBytes(MOST_BYTES));
      return new SplicedFile(file, opened.splice(), opened.faults());
    } catch (IOException refused) {
      return new SplicedFile(
          file,
          null,
          List.of(
              new Fault(
                  new Place(name(file), 1, 1),
                  "this file cannot be opened",
                  "expected a file that may be read",
                  "check the path and its permissions")));
    }
  }

  Path file() {
    return file;
  }

  /** How places name it. */
  String name() {
    return name(file);
  }

  private static String name(Path file) {
    return file.toString().replace(File.separatorChar, '/');
  }

  /** What hinders reading it. */
  List<Fault> faults() {
    return faults;
  }

  /** Null when there is no such file yet. */
  @Nullable Splice splice() {
    return splice;
  }

  /**
   * What the file will hold; of a content that its own reader refuses, the faults.
   *
   * @param reader reads the new text as the kind of document it is, and gives its faults
   */
  Splice.Result with(YamlValue.Keys content, Function<Tree, List<Fault>> reader) {
    Splice.Result result =
        splice == null ? new Splice.Result(Splice.begun(content), List.of()) : splice.to(content);
    String text = result.text();
    if (text == null) {
      return result;
    }
    YamlTree.Parsed again = YamlTree.read(name(), text.getBytes(StandardCharsets.UTF_8));
    Tree tree = again.tree();
    List<Fault> wrong = tree == null ? again.faults() : reader.apply(tree);
    return wrong.isEmpty() ? result : new Splice.Result(null, wrong);
  }

  /**
   * Writes the file when anything was added to it.
   *
   * @param tell is told what was done with the file, in a sentence
   */
  ExitCode finish(
      YamlValue.Keys content,
      int added,
      boolean dryRun,
      Function<Tree, List<Fault>> reader,
      Messages messages,
      Consumer<String> tell) {
    String unchanged = name() + " stays as it is.";
    Splice.Result result = added == 0 ? null : with(content, reader);
    String text = result == null ? null : result.text();
    if (result != null && text == null) {
      messages.tell(result.faults());
      messages.tell(unchanged);
      return ExitCode.WRONG_DOCUMENT;
    }
    boolean begun = splice == null;
    ExitCode written = text == null || dryRun ? ExitCode.FINE : write(text, messages);
    if (written == ExitCode.FINE) {
      tell.accept(
          text == null
              ? unchanged
              : name()
                  + (dryRun
                      ? (begun ? " would be begun" : " would have them") + "; nothing was written."
                      : begun ? " is begun." : " has them now."));
    }
    return written;
  }

  private ExitCode write(String text, Messages messages) {
    try (Output output = Output.to(file)) {
      output.writer().write(text);
      output.finish();
      return ExitCode.FINE;
    } catch (IOException refused) {
      messages.tell(
          "peakproof: cannot write '"
              + file
              + "' ("
              + refused.getClass().getSimpleName()
              + "); "
              + (splice == null ? "nothing was written" : "it stays as it is"));
      return ExitCode.WRONG_USAGE;
    }
  }
}
