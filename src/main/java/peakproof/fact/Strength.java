package peakproof.fact;

import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;

/** Strength work. */
public final class Strength extends Session {
  Strength(Draft draft) {
    super(draft);
  }

  @Override
  Sport sport() {
    return Sport.STRENGTH;
  }

  /** True when it is said to be for the legs. */
  public boolean legs() {
    return written.strength() != null && written.strength().purposes().contains("legs");
  }

  /** True for a heavy load; false when the load is not said. */
  public boolean heavy() {
    return "heavy".equals(load());
  }

  /** True for a light load; false when the load is not said. */
  public boolean light() {
    return "light".equals(load());
  }

  private @Nullable String load() {
    return written.strength() == null ? null : written.strength().load();
  }

  /** True when it is said to be of a new programme. */
  public boolean newProgramme() {
    return written.fresh();
  }

  /** True when it may be heavy work for the legs, but does not say what for or how heavy. */
  boolean untold() {
    return heavy() && written.strength() != null && written.strength().purposes().isEmpty()
        || legs() && load() == null;
  }

  /** What it asks of the athlete, in words. */
  public String work() {
    String load = load() == null ? "" : load() + " ";
    return load
        + (legs() ? "work for the legs" : "work")
        + (newProgramme() ? " of a new programme" : "");
  }

  /**
   * The first hard or long run later on its day or on the next, in words; null without one, and
   * when the clock puts a day or more between them.
   */
  public @Nullable String keyRunWithinDay() {
    Run run = KeyRuns.within(this, timeline);
    return run == null ? null : run.label() + " on " + Words.weekday(run.date());
  }
}
