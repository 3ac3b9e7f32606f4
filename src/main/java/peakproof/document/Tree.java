package peakproof.document;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A YAML document with the place of every key and value. Every scalar is the text that was written;
 * what it means is decided by the key that reads it.
 */
public sealed interface Tree {
  /** Where the value begins. */
  Place place();

  /** A key with its value; null when this is no mapping or does not hold the key. */
  default @Nullable Entry entry(String key) {
    return this instanceof Mapping mapping ? mapping.entries().get(key) : null;
  }

  /** Keys and values in the order they are written. */
  record Mapping(Place place, Map<String, Entry> entries) implements Tree {}

  /** A key's place, and its value. */
  record Entry(Place key, Tree value) {}

  /** A list. */
  record Sequence(Place place, List<Tree> items) implements Tree {}

  /**
   * A piece of text.
   *
   * @param text what the file says, after quotes and folding
   * @param layout where each character of the text stands in the file
   */
  record Scalar(Place place, String text, Style style, Layout layout) implements Tree {
    /** Text that stands in one piece at a place, for trees that come from no file. */
    public Scalar(Place place, String text) {
      this(
          place,
          text,
          Style.PLAIN,
          offset ->
              new Place(
                  place.file(),
                  place.line(),
                  place.column() + text.codePointCount(0, Math.min(offset, text.length()))));
    }

    /** Where the character at an offset of the text stands in the file. */
    public Place at(int offset) {
      return layout.at(offset);
    }
  }

  /** How a scalar is written. */
  enum Style {
    PLAIN,
    QUOTED,
    BLOCK,
    /** Already reported as a fault; readers pass over it in silence. */
    FAULTY
  }

  /** Maps an offset in a scalar's text to its place in the file. */
  @FunctionalInterface
  interface Layout {
    /** The place of the character at an offset, counted in chars of the text. */
    Place at(int offset);
  }
}
