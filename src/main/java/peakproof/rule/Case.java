package peakproof.rule;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Place;
import peakproof.document.Tree;

/**
 * One example beside a rule: the base document with some changes, and everything the audit must
 * find in it.
 *
 * @param expectation whether the rule must find, be silent, or be unsure
 * @param log null when the case takes it away
 * @param finds every finding there must be, with its severity
 * @param unsure rules that must be not judged
 */
public record Case(
    String rule,
    String name,
    Place place,
    Expectation expectation,
    LocalDate asOf,
    Tree plan,
    Tree event,
    @Nullable Tree log,
    Map<String, Severity> finds,
    Set<String> unsure) {

  /** What a case shows of its rule. */
  public enum Expectation {
    WRONG,
    FINE,
    UNSURE
  }
}
