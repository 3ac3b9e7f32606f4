package peakproof.document;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Reads YAML text into a {@link Tree}; whatever is wrong with it becomes a fault. */
public final class YamlTree {
  static final int BYTE_LIMIT = 2 * 1024 * 1024;
  private static final YAMLFactory FACTORY = new YAMLFactory();

  private YamlTree() {}

  /**
   * What a file holds.
   *
   * @param tree null when the file could not be read to its end, or is empty
   * @param faults in the order of the file; some leave a tree whose other parts can still be read
   */
  public record Parsed(@Nullable Tree tree, List<Fault> faults) {}

  /**
   * Reads a file's bytes: UTF-8, with or without a byte-order mark, at most 2 MiB, one document, at
   * most 32 levels deep and 200,000 nodes.
   *
   * @param file the name that places carry
   */
  public static Parsed read(String file, byte[] bytes) {
    Faults faults = new Faults();
    Source source = decode(file, bytes, faults);
    if (source == null) {
      return new Parsed(null, faults.sorted());
    }
    TreeBuilder builder = new TreeBuilder(source, faults);
    boolean whole = parse(source, builder, faults);
    Tree root = whole ? builder.root() : null;
    boolean empty = !(root instanceof Tree.Mapping) && !(root instanceof Tree.Sequence);
    if (whole && faults.none() && (root == null || (empty && isFaulty(root)))) {
      faults.add(
          new Place(file, 1, 1),
          "this file is empty",
          "expected a document that begins with plan, log, event or house",
          "write it, or remove the file");
      root = null;
    }
    return new Parsed(root, faults.sorted());
  }

  private static boolean isFaulty(Tree tree) {
    return tree instanceof Tree.Scalar scalar && scalar.style() == Tree.Style.FAULTY;
  }

  /** The text of a file or line; null, and a fault told, when it cannot be read. */
  static @Nullable Source decode(String file, byte[] bytes, Faults faults) {
    Place top = new Place(file, 1, 1);
    if (bytes.length > BYTE_LIMIT) {
      faults.add(
          top,
          "this file is larger than 2 MiB",
          "expected one athlete's plan or log",
          "split it, or check that it is the right file");
      return null;
    }
    Source source = Source.decode(file, bytes);
    if (source == null) {
      faults.add(
          Utf8.firstWrong(file, bytes),
          "this is not UTF-8 text",
          "expected a text file in UTF-8",
          "save the file as UTF-8 in your editor");
      return null;
    }
    int unprintable = source.firstUnprintable();
    if (unprintable >= 0) {
      faults.add(
          source.place(unprintable),
          String.format(Locale.ROOT, "the control character U+%04X", source.at(unprintable)),
          "expected text",
          "delete it");
      return null;
    }
    return source;
  }

  private static boolean parse(Source source, TreeBuilder builder, Faults faults) {
    try (JsonParser parser = FACTORY.createParser(source.text())) {
      try {
        return readTokens(parser, builder);
      } catch (JsonProcessingException e) {
        faults.addOnce(
            e.getCause() instanceof MarkedYAMLException problem
                ? YamlProblem.of(
                    source,
                    problem,
                    offset(problem.getProblemMark()),
                    offset(problem.getContextMark()))
                : YamlProblem.notAKey(source, tokenOffset(parser)));
      }
    } catch (IOException | RuntimeException e) {
      faults.addOnce(YamlProblem.unknown(source));
    }
    return false;
  }

  private static boolean readTokens(JsonParser parser, TreeBuilder builder) throws IOException {
    while (true) {
      JsonToken token = parser.nextToken();
      if (token == null) {
        return true;
      }
      String text = parser.getText();
      if (!builder.take(token, text == null ? "" : text, tokenOffset(parser))) {
        return false;
      }
    }
  }

  private static int tokenOffset(JsonParser parser) {
    return (int) Math.max(0, parser.currentTokenLocation().getCharOffset());
  }

  private static int offset(@Nullable Mark mark) {
    return mark == null ? -1 : mark.getIndex();
  }
}
