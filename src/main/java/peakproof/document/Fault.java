package peakproof.document;

import java.util.Comparator;

/**
 * Something wrong in a file that its author can mend.
 *
 * @param what what is wrong, naming the value as written
 * @param expected what was expected
 * @param instead what to write instead
 */
public record Fault(Place place, String what, String expected, String instead)
    implements Comparable<Fault> {
  private static final Comparator<Fault> ORDER =
      Comparator.comparing(Fault::place).thenComparing(Fault::what);

  @Override
  public int compareTo(Fault other) {
    return ORDER.compare(this, other);
  }

  /** The one line a user reads: {@code FILE:LINE:COL: what; expected; instead}. */
  @Override
  public String toString() {
    return place + ": " + what + "; " + expected + "; " + instead;
  }
}
