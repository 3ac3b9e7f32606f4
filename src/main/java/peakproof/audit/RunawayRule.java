package peakproof.audit;

import org.jspecify.annotations.Nullable;

/** A rule that did not come to its end; the audit of its plan is not worth showing. */
final class RunawayRule extends Exception {
  private static final long serialVersionUID = 1;
  final @Nullable String rule;
  final String what;
  final Auditor.Stop stop;

  /**
   * @param rule null when it could not be told which it was
   * @param what what it did, in words that go after the rule's name
   */
  RunawayRule(@Nullable String rule, String what, Auditor.Stop stop) {
    super(rule + " " + what);
    this.rule = rule;
    this.what = what;
    this.stop = stop;
  }
}
