package peakproof.document;

/**
 * Maps offsets in a scalar's text back to the file, through quotes, escapes, folding and block
 * indentation. All of these change white space only, so the visible characters of the text and of
 * the file pair off one to one, and white space stands after the visible character before it.
 */
final class ScalarLayout implements Tree.Layout {
  private final Source source;
  private final String text;
  private final int start;

  ScalarLayout(Source source, String text, int start) {
    this.source = source;
    this.text = text;
    this.start = start;
  }

  @Override
  public Place at(int offset) {
    int quote = source.at(start);
    boolean escapes = quote == '"';
    int next = contentStart(quote);
    int end = Math.min(offset, text.length());
    for (int i = 0; i < end; i += Character.charCount(text.codePointAt(i))) {
      if (isSpace(text.codePointAt(i))) {
        next += isSpace(source.at(next)) && !isBreak(source.at(next)) ? 1 : 0;
      } else {
        next = skipSpace(next, escapes);
        next += width(next, quote);
      }
    }
    boolean visible = end < text.length() && !isSpace(text.codePointAt(end));
    return source.place(visible ? skipSpace(next, escapes) : next);
  }

  private int contentStart(int quote) {
    if (quote == '|' || quote == '>') {
      int i = start;
      while (source.at(i) != -1 && !isBreak(source.at(i))) {
        i++;
      }
      return i;
    }
    return quote == '"' || quote == '\'' ? start + 1 : start;
  }

  private int skipSpace(int from, boolean escapes) {
    int i = from;
    while (isSpace(source.at(i)) || (escapes && isEscapedSpace(i))) {
      i += width(i, escapes ? '"' : 0);
    }
    return i;
  }

  private boolean isEscapedSpace(int i) {
    if (source.at(i) != '\\') {
      return false;
    }
    int next = source.at(i + 1);
    int digits = hexDigits(next);
    if (digits == 0) {
      return isSpace(next) || "tnrN_LP".indexOf(next) >= 0;
    }
    int value = 0;
    for (int k = 0; k < digits; k++) {
      value = value * 16 + Math.max(0, Character.digit(source.at(i + 2 + k), 16));
    }
    return isSpace(value);
  }

  /** How many code points of the file the character at an offset takes. */
  private int width(int i, int quote) {
    if (quote == '"' && source.at(i) == '\\') {
      return 2 + hexDigits(source.at(i + 1));
    }
    return quote == '\'' && source.at(i) == '\'' && source.at(i + 1) == '\'' ? 2 : 1;
  }

  private static int hexDigits(int escape) {
    return switch (escape) {
      case 'x' -> 2;
      case 'u' -> 4;
      case 'U' -> 8;
      default -> 0;
    };
  }

  private static boolean isBreak(int c) {
    return c == '\n' || c == '\r' || c == 0x85 || c == 0x2028 || c == 0x2029;
  }

  private static boolean isSpace(int c) {
    return c == ' ' || c == '\t' || c == 0xA0 || isBreak(c);
  }
}
