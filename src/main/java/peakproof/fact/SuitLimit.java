package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.measure.Constant;
import peakproof.measure.Constants;

/**
 * The race's water beside the temperature above which a wetsuit would be forbidden: the event's own
 * threshold, else the usual one of long swims.
 *
 * @param celsius the water as forecast; unknown when not written
 * @param limitCelsius the threshold
 */
public record SuitLimit(@Nullable Double celsius, double limitCelsius) implements Fact {
  static SuitLimit of(Event event, Constants constants) {
    Double own = event.ruleBook() == null ? null : event.ruleBook().forbiddenAbove();
    return new SuitLimit(
        event.swim().temperature(), own == null ? constants.of(Constant.WETSUIT_LIKELY_TO) : own);
  }

  /** Degrees between the two, whichever is higher; unknown like the water. */
  public @Nullable Double apartCelsius() {
    return celsius == null ? null : (Double) Exact.of(Math.abs(celsius - limitCelsius));
  }

  @Override
  public List<Where> where() {
    return List.of(new Where("/event/swim", null, null));
  }
}
