package peakproof.intake;

import java.util.List;
import peakproof.document.Fault;
import peakproof.document.Place;

/**
 * What a file held.
 *
 * @param sessions in the order of the file; none when there is any fault
 * @param passed what the file holds that is no session to take, with the reason
 */
public record Received(List<Incoming> sessions, List<Passed> passed, List<Fault> faults) {
  /** Something that was left out. */
  public record Passed(Place from, String what, String why) {}

  static Received wrong(List<Fault> faults) {
    return new Received(List.of(), List.of(), faults);
  }
}
