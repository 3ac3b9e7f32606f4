package peakproof.fact;

import java.util.List;

/** Anything a rule may report: it knows where it is written. */
public interface Fact {
  /** The entries it rests on, the one to change first; never empty. */
  List<Where> where();
}
