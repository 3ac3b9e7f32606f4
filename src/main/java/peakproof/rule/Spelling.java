package peakproof.rule;

import java.util.Collection;
import java.util.TreeSet;
import peakproof.document.Nearest;

/** What to write instead of a name nobody knows. */
final class Spelling {
  private Spelling() {}

  /** The nearest known name, else all of them. */
  static String instead(String word, Collection<String> known) {
    return Nearest.advice(word, known, "one of: " + String.join(", ", new TreeSet<>(known)));
  }
}
