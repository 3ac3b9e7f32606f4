package peakproof.document;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A session in the trade's shorthand, read: {@code 400 easy, 8x50 drill r15s, 5x600 race r30s}.
 *
 * @param text the line as written
 * @param parts its parts in order, at least one
 */
public record SetLine(String text, List<Part> parts) {
  /**
   * One part: a number of repetitions of some work, with what is asked of it.
   *
   * @param count repetitions, 1 when unsaid
   * @param effort the effort word, or null when unsaid
   * @param target what it is held at, or null when unsaid
   * @param kit kit words of the part: paddles, fins, pull-buoy
   * @param rest rest after each repetition, or null when none is said
   */
  public record Part(
      int count,
      Work work,
      @Nullable Effort effort,
      @Nullable Target target,
      Set<String> kit,
      @Nullable Rest rest) {}

  /** What is repeated. */
  public sealed interface Work {}

  /** A distance in metres. */
  public record Distance(double metres) implements Work {}

  /** A time in seconds. */
  public record Time(double seconds) implements Work {}

  /** A line in brackets. */
  public record Group(List<Part> parts) implements Work {}

  /** How a repetition is followed by the next. */
  public sealed interface Rest {}

  /** Passive rest of so many seconds, taken only when something follows. */
  public record After(double seconds) implements Rest {}

  /** Each repetition leaves so many seconds after the one before. */
  public record SendOff(double seconds) implements Rest {}
}
