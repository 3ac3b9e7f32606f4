package peakproof.document;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Adds to a document without touching what is there: comments, layout and line ends stay byte for
 * byte. Whoever wants an addition takes {@link #content}, adds to it and asks for {@link #to}; a
 * key goes where the wanted order puts it, a list's item likewise, indented as its neighbours are.
 *
 * <p>The new text is read again, and refused when it does not say exactly what was wanted.
 */
public final class Splice {
  private final Source source;
  private final boolean marked;
  private final Tree tree;
  private final SpliceGround ground;
  private final List<Edit> edits = new ArrayList<>();

  private Splice(Source source, boolean marked, Tree tree) {
    this.source = source;
    this.marked = marked;
    this.tree = tree;
    this.ground = new SpliceGround(source);
  }

  /**
   * A document to add to.
   *
   * @param splice null when the file cannot be read
   */
  public record Opened(@Nullable Splice splice, List<Fault> faults) {}

  /**
   * What comes of it.
   *
   * @param text the whole new file; null when it was refused, and a fault says where
   */
  public record Result(@Nullable String text, List<Fault> faults) {}

  /** Something put in before an offset. */
  record Edit(int offset, String text) {}

  /** An addition that would not leave the rest as it is. */
  private static final class Refused extends Exception {
    private static final long serialVersionUID = 1;
    private final transient Place place;

    Refused(Place place) {
      this.place = place;
    }
  }

  /** Reads a file's bytes, as {@link YamlTree#read} does. */
  public static Opened of(String file, byte[] bytes) {
    YamlTree.Parsed parsed = YamlTree.read(file, bytes);
    Source source = Source.decode(file, bytes);
    Tree tree = parsed.tree();
    if (tree == null || source == null || !parsed.faults().isEmpty()) {
      return new Opened(null, parsed.faults());
    }
    boolean marked = bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB;
    return new Opened(new Splice(source, marked, tree), List.of());
  }

  /** A document that does not exist yet. */
  public static String begun(YamlValue.Keys content) {
    return String.join("\n", YamlText.entries(content)) + "\n";
  }

  /** The document as it was read. */
  public Tree tree() {
    return tree;
  }

  /** What the document says now. */
  public YamlValue content() {
    return YamlValue.of(tree);
  }

  /** The document with everything the wanted content says beyond it. */
  public Result to(YamlValue wanted) {
    edits.clear();
    Place first;
    try {
      walk(tree, wanted);
      String text = spliced();
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      YamlTree.Parsed again = YamlTree.read(source.file(), bytes);
      Tree read = again.tree();
      if (read != null && again.faults().isEmpty() && YamlValue.of(read).equals(wanted)) {
        return new Result(text, List.of());
      }
      first =
          edits.stream()
              .min(Comparator.comparingInt(Edit::offset))
              .map(edit -> source.place(edit.offset()))
              .orElse(tree.place());
    } catch (Refused refused) {
      first = refused.place;
    }
    return new Result(
        null,
        List.of(
            new Fault(
                first,
                "nothing can be added here without changing what stands around it",
                "expected keys and lists on lines of their own",
                "write it with a line for each entry, or add by hand")));
  }

  private String spliced() {
    StringBuilder text = new StringBuilder(marked ? "\uFEFF" : "");
    int from = 0;
    for (Edit edit : edits.stream().sorted(Comparator.comparingInt(Edit::offset)).toList()) {
      text.append(source.text(from, edit.offset())).append(edit.text());
      from = edit.offset();
    }
    return text.append(source.text(from, source.length())).toString();
  }

  private void walk(Tree old, YamlValue wanted) throws Refused {
    if (old instanceof Tree.Mapping mapping && wanted instanceof YamlValue.Keys keys) {
      keys(mapping, keys);
    } else if (old instanceof Tree.Sequence sequence && wanted instanceof YamlValue.Items items) {
      items(sequence, items);
    } else if (old instanceof Tree.Scalar scalar
        && wanted instanceof YamlValue.Text text
        && text.text().startsWith(scalar.text())) {
      String more = text.text().substring(scalar.text().length());
      if (!more.isEmpty()) {
        edits.add(new Edit(source.offset(scalar.at(scalar.text().length())), more));
      }
    } else {
      throw new Refused(old.place());
    }
  }

  private void keys(Tree.Mapping mapping, YamlValue.Keys wanted) throws Refused {
    if (!wanted.entries().keySet().containsAll(mapping.entries().keySet())) {
      throw new Refused(mapping.place());
    }
    SpliceGround.Row row = ground.row(mapping);
    List<Map.Entry<String, YamlValue>> entries = List.copyOf(wanted.entries().entrySet());
    for (int i = 0; i < entries.size(); i++) {
      String key = entries.get(i).getKey();
      YamlValue value = entries.get(i).getValue();
      Tree.Entry old = mapping.entries().get(key);
      if (old != null) {
        walk(old.value(), value);
      } else {
        Place next = null;
        for (int j = i + 1; j < entries.size() && next == null; j++) {
          Tree.Entry later = mapping.entries().get(entries.get(j).getKey());
          next = later == null ? null : later.key();
        }
        edits.add(
            row.inBrackets()
                ? row.between(next, YamlText.entryInBrackets(key, value))
                : row.lines(next, YamlText.entry(key, value)));
      }
    }
  }

  private void items(Tree.Sequence sequence, YamlValue.Items wanted) throws Refused {
    SpliceGround.Row row = ground.row(sequence);
    int met = 0;
    for (YamlValue item : wanted.items()) {
      Tree next = met < sequence.items().size() ? sequence.items().get(met) : null;
      if (next != null && item.saysMoreThan(YamlValue.of(next))) {
        walk(next, item);
        met++;
      } else {
        Place before = next == null ? null : next.place();
        edits.add(
            row.inBrackets()
                ? row.between(before, YamlText.inBrackets(item))
                : row.lines(before, YamlText.item(item)));
      }
    }
    if (met < sequence.items().size()) {
      throw new Refused(sequence.place());
    }
  }
}
