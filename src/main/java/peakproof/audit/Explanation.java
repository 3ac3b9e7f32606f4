package peakproof.audit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Positions;
import peakproof.rule.Account;
import peakproof.rule.RuleInForce;

/**
 * How one rule judges one plan, and by what.
 *
 * @param audit the audit of the plan, for its heading and places
 * @param account what the rule looked at; null when it looked at nothing
 * @param positions where the facts are written
 */
public record Explanation(
    RuleInForce standing,
    Audit audit,
    Verdict verdict,
    @Nullable Account account,
    Positions positions) {

  /** What came of the rule. */
  public sealed interface Verdict {
    /** It found this; {@code accepted} says which of it the coach lives with. */
    record Found(List<Finding> findings, List<Audit.AcceptedFinding> accepted) implements Verdict {}

    /** It found nothing. */
    record Clear() implements Verdict {}

    /** It could not judge without these entries. */
    record NotJudged(List<String> missing) implements Verdict {}

    /** It is not for this plan. */
    record NotFor(String because) implements Verdict {}

    /** The house turned it off. */
    record Silenced(String because) implements Verdict {}
  }

  /** What came of one plan. */
  public sealed interface Outcome {
    /** It was read and the rule explained. */
    record Explained(Explanation explanation) implements Outcome {}

    /** A document of it is wrong, or the house asks for what the rules do not have. */
    record Wrong(List<peakproof.document.Fault> faults) implements Outcome {}
  }
}
