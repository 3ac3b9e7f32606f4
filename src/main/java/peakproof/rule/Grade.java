package peakproof.rule;

import java.util.Locale;

/** How well a rule is founded; where two would do, the weaker. */
public enum Grade {
  STANDARD,
  CONSENSUS,
  TRIAL,
  COHORT,
  ARITHMETIC,
  EXPERT_PRACTICE,
  COMMON_PRACTICE;

  /** The word of cards and reports: {@code expert-practice}, … */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** True when somebody must have published it. */
  public boolean needsSource() {
    return compareTo(ARITHMETIC) < 0;
  }
}
