package peakproof.cli;

/** What a run's exit code says, mildest first: of several, the last one wins. */
enum ExitCode {
  FINE(0, "nothing found at or above --fail-at"),
  FOUND(1, "something found at or above --fail-at, a failing case, or no brief"),
  WRONG_DOCUMENT(3, "a document is wrong, or no plan was found"),
  WRONG_USAGE(2, "wrong usage"),
  WRONG_RULE(4, "a rule is wrong, or has no case"),
  INTERNAL_ERROR(5, "internal error");

  private final int number;
  private final String meaning;

  ExitCode(int number, String meaning) {
    this.number = number;
    this.meaning = meaning;
  }

  int number() {
    return number;
  }

  String meaning() {
    return meaning;
  }

  /** The one of the two that counts. */
  ExitCode or(ExitCode other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
