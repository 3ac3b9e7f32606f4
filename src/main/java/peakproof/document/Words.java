package peakproof.document;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * A closed list of words.
 *
 * @param kind what one of them is, with its article: {@code a kind of water}
 */
public record Words(String kind, List<String> all) {
  /** The list as it stands in the format. */
  public static Words of(String kind, String... words) {
    return new Words(kind, List.of(words));
  }

  /** The list with a club's own words. */
  public Words plus(Collection<String> more) {
    LinkedHashSet<String> together = new LinkedHashSet<>(all);
    together.addAll(more);
    return new Words(kind, List.copyOf(together));
  }

  /** The word itself when it is on the list. */
  public Quantity<String> read(String text) {
    return all.contains(text)
        ? new Quantity.Of<>(text)
        : new Quantity.NotThat<>(
            "'" + text + "' is not " + kind,
            "expected " + listed(all),
            Nearest.advice(text, all, "write one of these"));
  }

  /** {@code lake, sea or pool}. */
  static String listed(Collection<String> words) {
    List<String> list = new ArrayList<>(words);
    int last = list.size() - 1;
    return last < 1
        ? String.join("", list)
        : String.join(", ", list.subList(0, last)) + " or " + list.get(last);
  }
}
