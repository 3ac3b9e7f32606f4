package peakproof.rule;

/** How much a finding weighs, heaviest first. */
public enum Severity {
  /** Do not send: someone could be hurt, a race rule would be broken, or it cannot be right. */
  HOLD,
  /** Change before sending. */
  FIX,
  /** The coach should look and decide. */
  ASK,
  /** Worth knowing. */
  NOTE;

  /** True when this is at least as heavy as the other. */
  public boolean atLeast(Severity other) {
    return compareTo(other) <= 0;
  }
}
