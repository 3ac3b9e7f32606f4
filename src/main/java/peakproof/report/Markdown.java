package peakproof.report;

import java.util.regex.Pattern;

/**
 * Words of documents inside Markdown (CommonMark, with tables and links by themselves as hosts of
 * code add them): they stay words, whatever marks they hold, and call nobody.
 */
final class Markdown {
  private static final Pattern MARKS = Pattern.compile("[\\\\`*_{}\\[\\]<>#|~&$!^=+]");

  /** Hosts make links of these after the marks are gone; an invisible joiner keeps them apart. */
  private static final Pattern CALLS = Pattern.compile("@|#|://|(?i:www)(?=\\.)|(?i:mailto)(?=:)");

  private static final Pattern BACKQUOTES = Pattern.compile("`+");

  private static final char JOINER = '\u2060';
  private static final int LONG_NAME = 120;

  private Markdown() {}

  /** One line of plain words. */
  static String text(String text) {
    String marked = MARKS.matcher(Printable.of(text).strip()).replaceAll("\\\\$0");
    return CALLS.matcher(marked).replaceAll("$0" + JOINER);
  }

  /** A name, cut where nobody reads on. */
  static String name(String name) {
    int length = name.codePointCount(0, name.length());
    return length <= LONG_NAME
        ? text(name)
        : text(name.substring(0, name.offsetByCodePoints(0, LONG_NAME))) + "…";
  }

  /** Several lines of plain words, each a paragraph. */
  static String lines(String text) {
    return String.join("\n\n", text.lines().map(Markdown::text).toList());
  }

  /** A file or key as code, between more backquotes than it holds in a row. */
  static String code(String text) {
    String shown = Printable.of(text);
    int longest =
        BACKQUOTES.matcher(shown).results().mapToInt(row -> row.group().length()).max().orElse(0);
    String fence = "`".repeat(longest + 1);
    boolean padded = shown.startsWith("`") || shown.endsWith("`") || shown.isBlank();
    return padded ? fence + " " + shown + " " + fence : fence + shown + fence;
  }
}
