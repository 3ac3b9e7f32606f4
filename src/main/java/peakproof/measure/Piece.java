package peakproof.measure;

import org.jspecify.annotations.Nullable;
import peakproof.document.Target;

/** A stretch of a session as it is done, one repetition or one rest after another. */
sealed interface Piece {
  /** Seconds; null when they cannot be known. */
  @Nullable Double seconds();

  /**
   * One repetition.
   *
   * @param metres null when they cannot be known
   * @param labelledPace seconds per metre asked for beside the word race; null without
   * @param target what it is to be held at; null without
   * @param paced true when its pace is asked for, by a target or as goal pace; any other word
   *     leaves the athlete room
   */
  record Work(
      @Nullable Double seconds,
      @Nullable Double metres,
      Intensity intensity,
      @Nullable Double labelledPace,
      @Nullable Target target,
      boolean paced)
      implements Piece {}

  /** Passive rest. */
  record Pause(@Nullable Double seconds) implements Piece {}
}
