package peakproof.fact;

/**
 * What a rule's consequence speaks to. Each firing makes one report; reports of a rule become one
 * finding (one for each body part or illness where the fact has one).
 */
public interface Findings {
  /** Reports a fact. */
  void report(Settings settings, Fact fact);

  /** Reports a fact together with another that explains it. */
  void report(Settings settings, Fact fact, Fact because);

  /** Reports a fact with the one value on which the card's steps rise. */
  void report(Settings settings, Fact fact, double value);

  /** Reports a fact, another that explains it, and the value on which the steps rise. */
  void report(Settings settings, Fact fact, Fact because, double value);
}
