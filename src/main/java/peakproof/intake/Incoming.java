package peakproof.intake;

import java.time.LocalDate;
import peakproof.document.Place;
import peakproof.document.Sport;
import peakproof.document.YamlValue;

/**
 * A session on its way into a log or plan.
 *
 * @param from where it was read
 * @param keys its keys as the document will have them, the sport first
 */
public record Incoming(Place from, LocalDate date, Sport sport, YamlValue.Keys keys) {
  /** What a key says; empty when it is not there. */
  public String text(String key) {
    return keys.get(key) instanceof YamlValue.Text text ? text.text() : "";
  }

  /** What stands beside the sport: a duration, a distance or a set line. */
  public String amount() {
    return text(sport.word());
  }
}
