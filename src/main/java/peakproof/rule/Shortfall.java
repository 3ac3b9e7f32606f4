package peakproof.rule;

/** How far a condition that does not hold is from holding, to find what came nearest. */
final class Shortfall {
  private static final double LEAST = 1e-9;

  private Shortfall() {}

  /** The distance as a share of what is asked; the greatest number where nothing is measured. */
  static double of(Expression condition, Evaluation facts) {
    if (facts.holds(condition)) {
      return 0;
    }
    if (!(condition instanceof Expression.Pair pair)) {
      return Double.MAX_VALUE;
    }
    return switch (pair.operator()) {
      case "||" -> Math.min(of(pair.left(), facts), of(pair.right(), facts));
      case "&&" -> Math.max(of(pair.left(), facts), of(pair.right(), facts));
      case "<", "<=", ">", ">=", "==" -> between(pair, facts);
      default -> Double.MAX_VALUE;
    };
  }

  private static double between(Expression.Pair pair, Evaluation facts) {
    return facts.value(pair.left()) instanceof Number left
            && facts.value(pair.right()) instanceof Number right
        ? Math.abs(left.doubleValue() - right.doubleValue())
            / Math.max(Math.abs(right.doubleValue()), LEAST)
        : Double.MAX_VALUE;
  }
}
