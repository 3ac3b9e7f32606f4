package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Anything a rule may report: it knows where it is written. */
public interface Fact {
  /** The entries it rests on, the one to change first; never empty. */
  List<Where> where();

  /** The last day it can be put right, or null when its entries' own day or race day counts. */
  default @Nullable LocalDate bites() {
    return null;
  }

  /** True when it rests on an estimate; such a finding never weighs more than ASK. */
  default boolean estimated() {
    return false;
  }
}
