package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.SetLine;
import peakproof.document.Sport;
import peakproof.measure.SetBreakdown;

/** A swim. */
public final class Swim extends Session {
  Swim(Draft draft) {
    super(draft);
  }

  @Override
  Sport sport() {
    return Sport.SWIM;
  }

  /** True outside the pool; false when the venue is not said. */
  public boolean openWater() {
    return written.scene().openWater();
  }

  /** True when it is said to be alone. */
  public boolean alone() {
    return "alone".equals(written.scene().company());
  }

  /** True in a group or supervised. */
  public boolean inCompany() {
    String company = written.scene().company();
    return company != null && !company.equals("alone");
  }

  /** Temperature of its water, °C; unknown when not said. */
  public @Nullable Double celsius() {
    return written.scene().water();
  }

  /** True when it asks for distance under water, or for holding the breath. */
  public boolean underwater() {
    return written.wear().practises("underwater");
  }

  /** True in a wetsuit; in open water the kit list is taken as complete. */
  public boolean wetsuit() {
    return written.wear().has("wetsuit");
  }

  /** Longest stretch without a real rest, metres; unknown for a logged swim without a set line. */
  public @Nullable Double continuousMetres() {
    return set == null ? null : Exact.of(set.longestContinuous());
  }

  /** Longest single repetition, metres; unknown for a logged swim without a set line. */
  public @Nullable Double longestRepetitionMetres() {
    return set == null ? null : set.longestRepetition();
  }

  /** Metres at goal pace; unknown for a logged swim without a set line. */
  public @Nullable Double goalPaceMetres() {
    return set == null ? null : Exact.of(set.raceMetres());
  }

  /** Metres that its set line asks for with paddles; unknown when one of those parts is. */
  @Nullable Double paddlesMetres() {
    SetLine paddles = written.set() == null ? null : PaddleWork.of(written.set());
    return paddles == null
        ? (Double) 0.0
        : SetBreakdown.of(paddles, sport(), timeline.calibration(), timeline.constants()).metres();
  }

  List<SwimSet> sets() {
    return set == null
        ? List.of()
        : set.sets().stream().map(repeated -> new SwimSet(this, repeated)).toList();
  }
}
