package peakproof.document;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Where the reading of a set line stands. */
final class SetLineCursor {
  private static final Pattern WORD = Pattern.compile("[^\\s,;()]+|[()]");

  private final String text;
  private int offset;

  SetLineCursor(String text) {
    this.text = text;
  }

  int offset() {
    return offset;
  }

  boolean atEnd() {
    return offset >= text.length();
  }

  /** The next character; 0 at the end. */
  char peek() {
    return atEnd() ? 0 : text.charAt(offset);
  }

  void take() {
    offset++;
  }

  void skipSpaces() {
    while (isSpace(peek())) {
      offset++;
    }
  }

  /** Skips spaces and line ends. */
  void skipBlank() {
    while (isSpace(peek()) || isNewline(peek())) {
      offset++;
    }
  }

  boolean atPartEnd() {
    return atEnd() || peek() == ')' || isSeparator(peek());
  }

  /** Takes what stands between two parts; false when there is nothing but the end. */
  boolean separator() {
    skipSpaces();
    if (peek() == ',' || peek() == ';') {
      offset++;
      skipBlank();
      return true;
    }
    boolean newline = isNewline(peek());
    skipBlank();
    return newline && !atEnd() && peek() != ')';
  }

  /** Skips to the end of the part, brackets and all. */
  void skipPart() {
    int depth = 0;
    while (!atEnd()) {
      char c = peek();
      if (depth == 0 && atPartEnd()) {
        return;
      }
      depth += c == '(' ? 1 : c == ')' ? -1 : 0;
      offset++;
    }
  }

  /** The match of a pattern that begins here, taken; null when there is none. */
  @Nullable Matcher match(Pattern pattern) {
    Matcher matcher = at(pattern);
    if (!matcher.lookingAt()) {
      return null;
    }
    offset = matcher.end();
    return matcher;
  }

  boolean looksAt(Pattern pattern) {
    return at(pattern).lookingAt();
  }

  /** The word that begins here, not taken; empty at a separator or the end. */
  String word() {
    Matcher matcher = at(WORD);
    return matcher.lookingAt() ? matcher.group() : "";
  }

  /** The word after the comma that ends the word here. */
  String afterComma() {
    Matcher matcher = WORD.matcher(text).region(offset + word().length() + 1, text.length());
    return matcher.lookingAt() ? matcher.group() : "";
  }

  private Matcher at(Pattern pattern) {
    return pattern.matcher(text).region(offset, text.length());
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\u00a0';
  }

  private static boolean isNewline(char c) {
    return c == '\n' || c == '\r';
  }

  private static boolean isSeparator(char c) {
    return c == ',' || c == ';' || isNewline(c);
  }
}
