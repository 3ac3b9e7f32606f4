package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
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

  /**
   * How many times over it would spend the distance that can be swum above critical swim speed, if
   * no rest gave any of it back; 0 at or below that speed, unknown without swim tests and where no
   * pace is asked for.
   */
  public @Nullable Double timesReserve() {
    Calibration athlete = swim.timeline.calibration();
    Double critical = athlete.criticalSwimSpeed().value();
    Double reserve = athlete.swimReserve().value();
    Double pace = set.pace();
    if (!set.paced() || critical == null || reserve == null || pace == null) {
      return null;
    }
    Double most = RepeatSet.worstCase(100 / pace, critical, reserve, set.metres() * pace / 100);
    return Exact.of(most == null ? 0 : set.count() / most);
  }

  /** True when it is swum at the pace of the swim goal, within the glossary's share. */
  public boolean atGoalPace() {
    Double goal = swim.timeline.calibration().goalSwimPace().value();
    Double pace = set.pace();
    return goal != null
        && pace != null
        && Math.abs(pace / goal - 1) <= swim.timeline.constant(Constant.GOAL_WITHIN) + 1e-9;
  }

  /** Rest as a share of the time a repetition takes; unknown without a pace or a rest. */
  public @Nullable Double restShare() {
    Double pace = set.pace();
    Double rest = set.rest();
    return pace == null || rest == null
        ? null
        : (Double) Exact.of(rest / (set.metres() * pace / 100));
  }

  /** Pace at critical swim speed, seconds per 100 m, by tests; unknown without. */
  public @Nullable Double criticalPace() {
    Double critical = swim.timeline.calibration().criticalSwimSpeed().value();
    return critical == null ? null : (Double) (100 / critical);
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
