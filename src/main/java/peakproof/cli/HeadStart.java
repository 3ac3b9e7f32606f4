package peakproof.cli;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;

/**
 * The shipped rules of an audit, begun to be read before its arguments are understood: both take a
 * tenth of a second, and a cold start has cores to spare. Whether they are the ones to judge by is
 * known only afterwards.
 */
final class HeadStart {
  private static final Set<String> OTHERWISE =
      Set.of(RuleFolders.OWN, RuleFolders.WITHOUT_CACHE, "--help", "-h");

  private final Surroundings surroundings;
  private final @Nullable Auditor begun;

  private HeadStart(Surroundings surroundings, @Nullable Auditor begun) {
    this.surroundings = surroundings;
    this.begun = begun;
  }

  /** Begins, unless the arguments show that it would be for nothing. */
  static HeadStart of(String[] arguments, Surroundings surroundings) {
    List<String> given = List.of(arguments);
    boolean worthIt =
        given.size() > 1
            && given.get(0).equals(AuditCommand.NAME)
            && given.stream().noneMatch(each -> OTHERWISE.contains(each.split("=", 2)[0]));
    return new HeadStart(surroundings, worthIt ? RuleFolders.shippedAlone(surroundings) : null);
  }

  /** An auditor by the rules the user chose. */
  Auditor auditor(RuleFolders rules) {
    return begun != null && rules.areShippedAlone() ? begun : rules.auditor(surroundings);
  }
}
