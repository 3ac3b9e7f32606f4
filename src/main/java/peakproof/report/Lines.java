package peakproof.report;

import java.util.ArrayList;
import java.util.List;

/** Lays text into lines of a width, counted in code points. */
final class Lines {
  /** Binds two words, so that no line breaks between them; printed as a space. */
  private static final char BOUND = '\u00a0';

  private static final String DOT = BOUND + "· ";

  private Lines() {}

  /**
   * The words of a text in lines no wider than {@code width}, the first after {@code first}, the
   * others after as many spaces as {@code indent} says. A word wider than a line stays whole, so
   * that a file name can still be copied.
   */
  static List<String> wrapped(String first, int indent, String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : Printable.of(text).strip().split(" +", -1)) {
      if (!empty && length(line) + 1 + length(word) > width) {
        lines.add(finished(line));
        line = new StringBuilder(" ".repeat(indent));
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(finished(line));
    return lines;
  }

  /** Items with dots between them; a line ends after a dot, never before. */
  static String dotted(List<String> items) {
    return String.join(DOT, items);
  }

  /** A text that no line break may part. */
  static String bound(String text) {
    return text.replace(' ', BOUND);
  }

  static int length(CharSequence text) {
    return Character.codePointCount(text, 0, text.length());
  }

  private static String finished(StringBuilder line) {
    return line.toString().replace(BOUND, ' ').stripTrailing();
  }
}
