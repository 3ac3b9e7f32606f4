package peakproof.fact;

/** A fact that gets a finding of its own within one rule: a body part, an illness. */
public interface Grouped {
  /** What tells it from others of its kind, in the words of the document. */
  String group();
}
