package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.measure.RepeatSet;

/** A planned set of repetitions off an interval or a rest. */
public record SwimSet(Swim swim, RepeatSet set) implements Fact {
  /** Repetitions. */
  public double repetitions() {
    return set.count();
  }

  /** Metres of one repetition. */
  public double repetitionMetres() {
    return set.metres();
  }

  /** Pace it is to be held at, seconds per 100 m; unknown without a pace. */
  public @Nullable Double pace() {
    return set.pace();
  }

  /**
   * Rest before the next send-off, seconds; negative when the swimmer is late; unknown likewise.
   */
  public @Nullable Double restSeconds() {
    return set.rest();
  }

  /**
   * True when it leaves on an interval that gives less rest than a send-off needs; false for rest
   * of its own and without a known pace.
   */
  public boolean missesSendOff() {
    return Boolean.FALSE.equals(set.feasible());
  }

  /** True when it is still to come. */
  public boolean planned() {
    return swim.planned();
  }

  /** The swim in words. */
  public String label() {
    return swim.label();
  }

  @Override
  public List<Where> where() {
    return swim.where();
  }
}
