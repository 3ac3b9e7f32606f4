package peakproof.document;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads the trade's shorthand for a session; the grammar is in {@code docs/format.md}. */
public final class SetLines {
  private SetLines() {}

  /**
   * Something wrong in a line.
   *
   * @param offset where in the text, in chars
   */
  record Problem(int offset, Quantity.NotThat<SetLine> why) {}

  /** A line with all that is wrong in it; null when anything is. */
  record Outcome(@Nullable SetLine line, List<Problem> problems) {}

  /**
   * Reads one line of a swim, ride or run, such as {@code 400 easy, 8x50 drill r15s}; of several
   * problems the first is told.
   */
  public static Quantity<SetLine> read(String text, Sport sport) {
    Outcome outcome = parse(text, sport);
    return outcome.line() == null
        ? outcome.problems().get(0).why()
        : new Quantity.Of<>(outcome.line());
  }

  static Outcome parse(String text, Sport sport) {
    SetLineParser parser = new SetLineParser(text, sport);
    List<SetLine.Part> parts = parser.whole();
    return parser.problems().isEmpty()
        ? new Outcome(new SetLine(text.strip(), parts), List.of())
        : new Outcome(null, parser.problems());
  }
}
