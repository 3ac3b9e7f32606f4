package peakproof.document;

import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Finds the known word a mistyped one was probably meant to be. */
public final class Nearest {
  private Nearest() {}

  /**
   * The known word fewest typing slips away (a letter added, dropped, changed, or two swapped, case
   * apart); null when none is near: one slip in up to three letters, two in up to seven, else
   * three. Of equally near words the first counts.
   */
  public static @Nullable String among(String word, Collection<String> known) {
    String typed = word.strip().toLowerCase(Locale.ROOT);
    int limit = typed.length() <= 3 ? 1 : typed.length() <= 7 ? 2 : 3;
    String best = null;
    int fewest = limit + 1;
    for (String candidate : known) {
      if (Math.abs(candidate.length() - typed.length()) > limit) {
        continue;
      }
      int slips = slips(typed, candidate.toLowerCase(Locale.ROOT));
      if (slips < fewest && slips < Math.max(candidate.length(), 2)) {
        fewest = slips;
        best = candidate;
      }
    }
    return best == null ? sharingBeginning(typed, known) : best;
  }

  private static @Nullable String sharingBeginning(String typed, Collection<String> known) {
    for (String candidate : known) {
      boolean longer = candidate.length() >= 3 && typed.startsWith(candidate);
      if (longer || (typed.length() >= 3 && candidate.startsWith(typed))) {
        return candidate;
      }
    }
    return null;
  }

  /** {@code did you mean 'swim'?}, or the other advice when no known word is near. */
  public static String advice(String word, Collection<String> known, String otherwise) {
    String near = among(word, known);
    return near == null ? otherwise : "did you mean '" + near + "'?";
  }

  /** Optimal string alignment distance: Levenshtein's with swaps of neighbours. */
  private static int slips(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          cost[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(cost[i - 1][j], cost[i][j - 1]) + 1;
        least = Math.min(least, cost[i - 1][j - 1] + change);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        cost[i][j] = swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
      }
    }
    return cost[a.length()][b.length()];
  }
}
