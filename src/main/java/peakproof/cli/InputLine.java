package peakproof.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import peakproof.document.Reading;
import peakproof.document.StreamedPlan;

/** A line of a stream of plans: its number, counted from 1, and what it holds. */
final class InputLine {
  static final String NAME = StreamedPlan.NAME;

  private final int number;
  private final byte @Nullable [] bytes;

  /**
   * @param bytes null when there are more than a line may hold
   */
  InputLine(int number, byte @Nullable [] bytes) {
    this.number = number;
    this.bytes = bytes;
  }

  int number() {
    return number;
  }

  /**
   * Reads the documents in it.
   *
   * @param house the house file to use instead of what the line says
   */
  Reading read(@Nullable Path house) {
    return bytes == null ? StreamedPlan.tooLong() : StreamedPlan.read(bytes, house);
  }

  /** For messages. */
  @Override
  public String toString() {
    return NAME + " " + number;
  }
}
