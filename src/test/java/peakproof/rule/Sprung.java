package peakproof.rule;

/** A trap: whoever makes one of these because of a rule leaves a trace. */
public final class Sprung {
  static final String TRACE = "peakproof.sprung";

  /** What an accumulate function is made with. */
  public Sprung() {
    System.setProperty(TRACE, "yes");
  }
}
