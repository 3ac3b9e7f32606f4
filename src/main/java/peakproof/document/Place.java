package peakproof.document;

import java.util.Comparator;

/** A place in a file; line and column count from 1, columns in code points. */
public record Place(String file, int line, int column) implements Comparable<Place> {
  private static final Comparator<Place> ORDER =
      Comparator.comparing(Place::file)
          .thenComparingInt(Place::line)
          .thenComparingInt(Place::column);

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
