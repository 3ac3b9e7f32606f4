package peakproof.document;

import com.fasterxml.jackson.core.JsonToken;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Grows a tree token by token, refusing what the documents do without: anchors, tags and such. */
final class TreeBuilder {
  private static final int DEPTH_LIMIT = 32;
  private static final int NODE_LIMIT = 200_000;

  private final Source source;
  private final Faults faults;
  private final Deque<Level> open = new ArrayDeque<>();
  private @Nullable Tree root;
  private int nodes;

  TreeBuilder(Source source, Faults faults) {
    this.source = source;
    this.faults = faults;
  }

  @Nullable Tree root() {
    return root;
  }

  /**
   * Takes one token.
   *
   * @param offset where it begins, in code points
   * @return false when nothing after it can be read
   */
  boolean take(JsonToken token, String text, int offset) {
    if (token == JsonToken.END_OBJECT || token == JsonToken.END_ARRAY) {
      place(open.pop().close(), offset);
      return true;
    }
    if (root != null) {
      faults.add(
          source.place(offset),
          "a second document begins here",
          "expected one document in a file",
          "put it in a file of its own");
      return false;
    }
    if (overLimit(offset)) {
      return false;
    }
    boolean refused = refuseMark(offset);
    switch (token) {
      case START_OBJECT, START_ARRAY -> open.push(new Level(source, token, offset));
      case FIELD_NAME -> takeKey(text, offset);
      default -> takeScalar(token, text, offset, refused);
    }
    return true;
  }

  private boolean overLimit(int offset) {
    nodes++;
    if (nodes > NODE_LIMIT) {
      faults.add(
          source.place(offset),
          "this file has more than 200,000 entries",
          "expected one athlete's plan or log",
          "split it");
      return true;
    }
    if (open.size() >= DEPTH_LIMIT) {
      faults.add(
          source.place(offset),
          "entries are nested more than 32 deep",
          "expected the few levels the format has",
          "take out brackets or indentation");
      return true;
    }
    return false;
  }

  private boolean refuseMark(int offset) {
    int mark = source.at(offset);
    if (mark != '&' && mark != '*' && mark != '!') {
      return false;
    }
    Place place = source.place(offset);
    String word = source.wordAt(offset);
    switch (mark) {
      case '&' ->
          faults.addOnce(
              new Fault(
                  place,
                  "'" + word + "' is an anchor",
                  "expected every value written out",
                  "leave '" + word + "' out and write the value again where it is needed"));
      case '*' ->
          faults.addOnce(
              new Fault(
                  place,
                  "'" + word + "' is an alias",
                  "expected every value written out",
                  "write the value itself here"));
      default ->
          faults.addOnce(
              new Fault(
                  place,
                  "'" + word + "' is a tag",
                  "expected a plain value",
                  "leave '" + word + "' out"));
    }
    return true;
  }

  private void takeKey(String text, int offset) {
    Level level = open.element();
    level.key = text;
    level.keyOffset = offset;
    if (text.equals("<<") && source.at(offset) == '<') {
      faults.add(
          source.place(offset),
          "'<<' is a merge key",
          "expected every key written out",
          "write the keys themselves here (a week can say 'like: DATE')");
    }
  }

  private void takeScalar(JsonToken token, String text, int offset, boolean refused) {
    int first = source.at(offset);
    Tree.Style style =
        switch (refused ? '*' : first) {
          case '*' -> Tree.Style.FAULTY;
          case '"', '\'' -> Tree.Style.QUOTED;
          case '|', '>' -> Tree.Style.BLOCK;
          default -> Tree.Style.PLAIN;
        };
    if (style != Tree.Style.FAULTY && (token == JsonToken.VALUE_NULL || text.isBlank())) {
      style = Tree.Style.FAULTY;
      if (!reportEmpty(text, offset)) {
        return;
      }
    }
    place(
        new Tree.Scalar(source.place(offset), text, style, new ScalarLayout(source, text, offset)),
        offset);
  }

  /** Reports a missing value; false when the key before it was none and is to be forgotten. */
  private boolean reportEmpty(String text, int offset) {
    Level level = open.peek();
    if (level == null) {
      return true;
    }
    String key = level.key;
    if (key == null) {
      faults.add(
          source.place(offset),
          "this list item needs a value",
          "expected something after the '-'",
          "write it, or leave the line out");
      return true;
    }
    Place place = source.place(level.keyOffset);
    if (level.flow
        && text.isEmpty()
        && source.at(offset) != '"'
        && source.at(offset) != '\''
        && source.at(offset - 1) != ':') {
      level.key = null;
      if (!level.commaReported) {
        level.commaReported = true;
        faults.add(
            place,
            "'" + key + "' has no value" + (level.entries.isEmpty() ? "" : AFTER_COMMA),
            "expected 'key: value'",
            level.entries.isEmpty()
                ? "write ': ' after the key, such as {run: 40min easy}"
                : "put the set line in quotes or on its own line");
      }
      return false;
    }
    faults.add(
        place,
        "'" + key + "' needs a value",
        "expected something after the ':'",
        "write it, or leave the line out");
    return true;
  }

  private void place(Tree tree, int offset) {
    Level level = open.peek();
    if (level == null) {
      root = tree;
    } else if (level.sequence) {
      level.items.add(tree);
    } else {
      addEntry(level, tree, offset);
    }
  }

  private void addEntry(Level level, Tree tree, int offset) {
    String key = level.key;
    level.key = null;
    if (key == null) {
      throw new IllegalStateException("a value without a key at offset " + offset);
    }
    Place place = source.place(level.keyOffset);
    Tree.Entry before = level.entries.putIfAbsent(key, new Tree.Entry(place, tree));
    if (before != null) {
      faults.add(
          place,
          "'" + key + "' is written twice, first at " + before.key(),
          "expected each key once",
          "leave one of the two out");
    }
  }

  /** A mapping or list that is not closed yet. */
  private static final String AFTER_COMMA = ": inside { } a comma ends the value before it";

  private static final class Level {
    private final Place place;
    private final boolean sequence;
    private final boolean flow;
    private final Map<String, Tree.Entry> entries = new LinkedHashMap<>();
    private final List<Tree> items = new ArrayList<>();
    private @Nullable String key;
    private int keyOffset;
    private boolean commaReported;

    Level(Source source, JsonToken token, int offset) {
      this.place = source.place(offset);
      this.sequence = token == JsonToken.START_ARRAY;
      this.flow = source.at(offset) == '{';
    }

    Tree close() {
      return sequence
          ? new Tree.Sequence(place, Collections.unmodifiableList(items))
          : new Tree.Mapping(place, Collections.unmodifiableMap(entries));
    }
  }
}
