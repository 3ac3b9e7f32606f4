package peakproof.rule;

/** Why a HOLD holds. */
public enum Hold {
  /** Someone could be hurt. */
  HURT,
  /** A race rule would be broken. */
  RULES,
  /** The plan cannot be right. */
  CANNOT_BE_RIGHT;

  /** The word of cards and reports: {@code hurt}, {@code rules}, {@code cannot-be-right}. */
  public String word() {
    return this == CANNOT_BE_RIGHT ? "cannot-be-right" : name().toLowerCase(java.util.Locale.ROOT);
  }
}
