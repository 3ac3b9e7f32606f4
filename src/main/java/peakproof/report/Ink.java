package peakproof.report;

/**
 * Two inks on a terminal: bold, and one colour that marks only what must not be sent. Both say
 * again what the words already say, so plain text loses nothing.
 */
public enum Ink {
  PLAIN,
  COLOUR;

  private static final String BOLD = "\033[1m";
  private static final String BOLD_MAGENTA = "\033[1;35m";
  private static final String OFF = "\033[0m";

  String bold(String text) {
    return dipped(BOLD, text);
  }

  String alarm(String text) {
    return dipped(BOLD_MAGENTA, text);
  }

  private String dipped(String ink, String text) {
    return this == PLAIN ? text : ink + text + OFF;
  }
}
