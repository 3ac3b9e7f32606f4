package peakproof.document;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The text of a file in code points, the unit in which the YAML parser counts. */
final class Source {
  private static final int BYTE_ORDER_MARK = 0xFEFF;

  private final String file;
  private final int[] points;
  private final int[] lineStarts;

  private Source(String file, int[] points, int[] lineStarts) {
    this.file = file;
    this.points = points;
    this.lineStarts = lineStarts;
  }

  private static Source of(String file, int[] points) {
    return new Source(file, points, lineStarts(points));
  }

  /** The same text under another name. */
  Source named(String another) {
    return new Source(another, points, lineStarts);
  }

  /** Decodes a file's bytes strictly; null when they are no UTF-8. */
  static @Nullable Source decode(String file, byte[] bytes) {
    try {
      int[] points = points(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)));
      boolean marked = points.length > 0 && points[0] == BYTE_ORDER_MARK;
      return of(file, marked ? Arrays.copyOfRange(points, 1, points.length) : points);
    } catch (CharacterCodingException e) {
      return null;
    }
  }

  private static int[] points(CharBuffer chars) {
    int[] points = new int[chars.length()];
    int count = 0;
    for (int i = 0; i < chars.length(); i += Character.charCount(points[count - 1])) {
      points[count++] = Character.codePointAt(chars, i);
    }
    return count == points.length ? points : Arrays.copyOf(points, count);
  }

  String file() {
    return file;
  }

  String text() {
    return new String(points, 0, points.length);
  }

  int length() {
    return points.length;
  }

  /** The code point at an offset; -1 outside the text. */
  int at(int offset) {
    return offset >= 0 && offset < points.length ? points[offset] : -1;
  }

  Place place(int offset) {
    int within = Math.max(0, Math.min(offset, points.length));
    int found = Arrays.binarySearch(lineStarts, within);
    int line = found >= 0 ? found : -found - 2;
    return new Place(file, line + 1, within - lineStarts[line] + 1);
  }

  /** The offset of a place in this text. */
  int offset(Place place) {
    return lineStarts[place.line() - 1] + place.column() - 1;
  }

  /** Where a line, counted from 1, begins; -1 when the text has fewer or ends before it. */
  int startOfLine(int line) {
    boolean there = line <= lineStarts.length && lineStarts[line - 1] < points.length;
    return there ? lineStarts[line - 1] : -1;
  }

  /** True when the text's last line is ended. */
  boolean endsALine() {
    int last = at(points.length - 1);
    return last == '\n' || last == '\r';
  }

  /** What stands between two offsets. */
  String text(int from, int until) {
    return new String(points, from, until - from);
  }

  /** Where the line of an offset begins. */
  int lineStart(int offset) {
    return lineStarts[place(offset).line() - 1];
  }

  /** Where the last line that says something before an offset's begins; the first line else. */
  int lineBefore(int offset) {
    int start = lineStart(offset);
    do {
      start = start == 0 ? 0 : lineStart(start - 1);
    } while (start > 0 && line(start).isBlank());
    return start;
  }

  /** The line that begins at an offset, with a char for each code point. */
  String line(int start) {
    StringBuilder line = new StringBuilder();
    for (int i = start; i < points.length && points[i] != '\n' && points[i] != '\r'; i++) {
      line.append(Character.isBmpCodePoint(points[i]) ? (char) points[i] : '?');
    }
    return line.toString();
  }

  /** What is written from an offset up to the next space, comma or bracket. */
  String wordAt(int offset) {
    int end = offset;
    while (end < points.length && " \t\r\n,[]{}".indexOf(points[end]) < 0) {
      end++;
    }
    return new String(points, offset, end - offset);
  }

  /** The offset of the first character YAML does not allow; -1 when there is none. */
  int firstUnprintable() {
    for (int i = 0; i < points.length; i++) {
      int c = points[i];
      boolean printable =
          c == '\t'
              || c == '\n'
              || c == '\r'
              || c == 0x85
              || (c >= 0x20 && c <= 0x7E)
              || (c >= 0xA0 && c <= 0xD7FF)
              || (c >= 0xE000 && c <= 0xFFFD)
              || c >= 0x10000;
      if (!printable) {
        return i;
      }
    }
    return -1;
  }

  private static int[] lineStarts(int[] points) {
    int[] starts = new int[16];
    int count = 1;
    for (int i = 0; i < points.length; i++) {
      boolean carriageReturnAlone =
          points[i] == '\r' && !(i + 1 < points.length && points[i + 1] == '\n');
      if (points[i] == '\n' || carriageReturnAlone) {
        if (count == starts.length) {
          starts = Arrays.copyOf(starts, count * 2);
        }
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }
}
