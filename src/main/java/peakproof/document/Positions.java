package peakproof.document;

/** Where each JSON pointer of a set of documents stands in its file. */
@FunctionalInterface
public interface Positions {
  /**
   * The place of the value (for a map entry: of its key) that a pointer names; the nearest
   * enclosing one when the pointer itself is not written.
   */
  Place of(String pointer);
}
