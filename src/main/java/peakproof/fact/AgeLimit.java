package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;

/**
 * The athlete's age on race day beside the youngest age the event takes.
 *
 * @param age years; unknown when not written
 * @param eventMinimum years by the event's own sheet; unknown when not written
 */
public record AgeLimit(String pointer, @Nullable Double age, @Nullable Double eventMinimum)
    implements Fact {
  static AgeLimit of(Athlete athlete, Event event) {
    Integer minimum = event.minimumAge();
    return new AgeLimit(
        athlete.pointer(), athlete.age(), minimum == null ? null : (Double) (double) minimum);
  }

  /** True when the event itself says how young one may be. */
  public boolean eventSays() {
    return eventMinimum != null;
  }

  /** What the event says, in words. */
  public String asked() {
    return eventMinimum == null
        ? "does not say how young one may be"
        : "takes nobody under " + Words.number(eventMinimum);
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
