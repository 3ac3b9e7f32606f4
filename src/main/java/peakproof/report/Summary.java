package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import peakproof.rule.Severity;

/** One line over all plans of a run: how many stop at which word, and who must not be sent. */
final class Summary {
  private Summary() {}

  /**
   * The line.
   *
   * @param ranks of the audited plans
   * @param plans how many were found
   */
  static String of(List<Rank> ranks, int plans) {
    return plans + " plans, each at its worst: " + Lines.dotted(parts(ranks, plans, true));
  }

  /** The same without the names of those who must not be sent. */
  static String nameless(List<Rank> ranks, int plans) {
    return Lines.dotted(parts(ranks, plans, false));
  }

  private static List<String> parts(List<Rank> ranks, int plans, boolean named) {
    List<String> parts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      List<String> athletes =
          ranks.stream().filter(rank -> rank.heaviest() == severity).map(Rank::athlete).toList();
      if (!athletes.isEmpty()) {
        String names =
            named && severity == Severity.HOLD ? " (" + String.join(", ", athletes) + ")" : "";
        parts.add(severity + " in " + athletes.size() + names);
      }
    }
    long without = ranks.stream().filter(rank -> rank.heaviest() == null).count();
    if (without > 0) {
      parts.add("nothing found in " + without);
    }
    int notAudited = plans - ranks.size();
    if (notAudited > 0) {
      parts.add(notAudited + " not audited");
    }
    return parts.stream().map(Lines::bound).toList();
  }
}
