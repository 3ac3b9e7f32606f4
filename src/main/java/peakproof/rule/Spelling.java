package peakproof.rule;

import java.util.Collection;
import java.util.TreeSet;

/** What to write instead of a name nobody knows. */
final class Spelling {
  private Spelling() {}

  /** The nearest known name, else all of them. */
  static String instead(String word, Collection<String> known) {
    return "one of: " + String.join(", ", new TreeSet<>(known));
  }
}
