package peakproof.document;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where in a text the neighbours of a new entry begin and end. */
final class SpliceGround {
  private final Source source;
  private final String lineEnd;

  SpliceGround(Source source) {
    this.source = source;
    int second = source.startOfLine(2);
    boolean broken = second > 0;
    boolean returned = broken && source.at(second - 1) == '\n' && source.at(second - 2) == '\r';
    this.lineEnd = returned ? "\r\n" : broken && source.at(second - 1) == '\r' ? "\r" : "\n";
  }

  /** The row of entries that a mapping or list is. */
  Row row(Tree tree) {
    List<Place> places = new ArrayList<>();
    Tree last = null;
    if (tree instanceof Tree.Mapping mapping) {
      for (Tree.Entry entry : mapping.entries().values()) {
        places.add(entry.key());
        last = entry.value();
      }
    } else if (tree instanceof Tree.Sequence sequence) {
      sequence.items().forEach(item -> places.add(item.place()));
    }
    int at = source.at(source.offset(tree.place()));
    boolean bracketed = at == '{' || at == '[';
    int column = tree.place().column();
    boolean listBelow =
        last instanceof Tree.Sequence sequence
            && sequence.place().column() == column
            && source.at(source.offset(sequence.place())) == '-';
    return new Row(tree.place(), places, bracketed, listBelow);
  }

  /** Entries beside or below each other. */
  final class Row {
    private final Place begins;
    private final List<Place> places;
    private final boolean bracketed;
    private final boolean listBelow;
    private boolean filled;

    private Row(Place begins, List<Place> places, boolean bracketed, boolean listBelow) {
      this.begins = begins;
      this.places = places;
      this.bracketed = bracketed;
      this.listBelow = listBelow;
      this.filled = !places.isEmpty();
    }

    boolean inBrackets() {
      return bracketed;
    }

    /** Puts an entry in front of the next one, or last. */
    Splice.Edit between(@Nullable Place next, String entry) {
      if (next != null) {
        return new Splice.Edit(source.offset(next), entry + ", ");
      }
      boolean first = !filled;
      filled = true;
      return new Splice.Edit(closing(source.offset(begins)), first ? entry : ", " + entry);
    }

    /** Puts whole lines in front of the next entry and its comment, or below the last. */
    Splice.Edit lines(@Nullable Place next, List<String> lines) {
      int column = begins.column();
      boolean own =
          next != null
              && source.line(source.startOfLine(next.line())).substring(0, column - 1).isBlank();
      int line =
          next != null && own
              ? aboveComments(next.line(), column)
              : below(places.get(places.size() - 1).line(), column);
      StringBuilder text = new StringBuilder();
      int at = source.startOfLine(line);
      boolean cut = at < 0 && !source.endsALine();
      for (String each : lines) {
        text.append(cut ? lineEnd : "").append(" ".repeat(column - 1)).append(each);
        text.append(cut ? "" : lineEnd);
      }
      return new Splice.Edit(at < 0 ? source.length() : at, text.toString());
    }

    private int aboveComments(int line, int column) {
      int top = line;
      while (top > 1 && isComment(top - 1) && indentation(top - 1) == column - 1) {
        top--;
      }
      return top;
    }

    /** The line after the entry that begins on a line, with what is indented below it. */
    private int below(int line, int column) {
      int end = line + 1;
      for (int at = end; source.startOfLine(at) >= 0; at++) {
        String text = source.line(source.startOfLine(at));
        boolean deeper = indentation(at) > column - 1;
        boolean listed = listBelow && indentation(at) == column - 1 && text.strip().startsWith("-");
        if (text.isBlank() || (isComment(at) && !deeper)) {
          continue;
        }
        if (!deeper && !listed) {
          break;
        }
        end = at + 1;
      }
      return end;
    }
  }

  private boolean isComment(int line) {
    return source.line(source.startOfLine(line)).stripLeading().startsWith("#");
  }

  private int indentation(int line) {
    String text = source.line(source.startOfLine(line));
    return text.length() - text.stripLeading().length();
  }

  /** Where the bracket that opens at an offset is closed; the text's end when it is not. */
  private int closing(int open) {
    int depth = 0;
    int quote = 0;
    int before = '[';
    for (int at = open; at < source.length(); at++) {
      int c = source.at(at);
      if (quote != 0) {
        at += quote == '"' && c == '\\' ? 1 : 0;
        quote = c == quote ? 0 : quote;
      } else if ((c == '"' || c == '\'') && "[{,:".indexOf(before) >= 0) {
        quote = c;
      } else if (c == '#' && Character.isWhitespace(source.at(at - 1))) {
        while (at + 1 < source.length() && source.at(at + 1) != '\n') {
          at++;
        }
      } else if (c == '[' || c == '{') {
        depth++;
      } else if ((c == ']' || c == '}') && --depth == 0) {
        return at;
      }
      before = Character.isWhitespace(c) ? before : c;
    }
    return source.length();
  }
}
