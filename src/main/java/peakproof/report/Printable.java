package peakproof.report;

/**
 * Text that a document's author wrote, made fit for a terminal: one line, and no control or
 * direction character that could repaint what stands around it.
 */
public final class Printable {
  private Printable() {}

  /** The text with line breaks as spaces and characters that act on a terminal as {@code �}. */
  public static String of(String text) {
    StringBuilder printable = new StringBuilder(text.length());
    text.codePoints().map(Printable::shown).forEach(printable::appendCodePoint);
    return printable.toString();
  }

  private static int shown(int codePoint) {
    if (codePoint == '\n' || codePoint == '\r' || codePoint == '\t') {
      return ' ';
    }
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          '\ufffd';
      case Character.FORMAT -> joinsLetters(codePoint) ? codePoint : '\ufffd';
      default -> codePoint;
    };
  }

  /** Zero-width joiner and non-joiner, which names in several scripts need. */
  private static boolean joinsLetters(int codePoint) {
    return codePoint == 0x200c || codePoint == 0x200d;
  }
}
