package peakproof.rule;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Fact;

/**
 * How a rule came to its verdict over the facts of one plan.
 *
 * @param looks each kind of fact it looked at, in the order of the rule
 * @param matches everything it reports
 * @param nearest what came nearest to being reported, or null when nothing came near
 */
public record Account(List<Look> looks, List<Match> matches, @Nullable Match nearest) {
  /**
   * One kind of fact, sieved; nothing is left of a kind that was never asked after.
   *
   * @param type the fact's name in rules
   * @param absent true when such a fact must not be there
   * @param of how many of them there are
   */
  public record Look(String type, boolean absent, int of, List<Sieve> sieves) {}

  /**
   * A condition in words, and how many of the facts still stand after it.
   *
   * @param fields the fields of the fact it names
   */
  public record Sieve(String condition, int left, List<String> fields) {}

  /**
   * Facts that belong together, each with what was asked of it.
   *
   * @param fact the reported one; null for what was not reported
   */
  public record Match(
      List<Seen> seen, @Nullable Fact fact, @Nullable Fact because, @Nullable Double value) {}

  /**
   * One fact with its values.
   *
   * @param type the fact's name in rules
   * @param holds what holds of it, with its values
   * @param label what it is called in words, or null when it has no name of its own
   * @param fails the first thing that does not, or null when all holds
   */
  public record Seen(
      String type, Fact fact, @Nullable String label, List<String> holds, @Nullable String fails) {}
}
